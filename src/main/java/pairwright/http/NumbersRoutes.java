package pairwright.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pairwright.catalogue.Shown;
import pairwright.numbers.CalculationInfo;
import pairwright.numbers.Given;
import pairwright.numbers.Numbers;
import pairwright.numbers.UnusableInputs;

/** The worked numbers over HTTP. */
final class NumbersRoutes {
    private static final String EXAMPLE = "{\"distanceM\": 2}";

    private final Numbers numbers = new Numbers();
    private final ObjectMapper json;
    private final int bodyMs;

    /** What there is. */
    record Calculations(List<CalculationInfo> entries) {
    }

    NumbersRoutes(ObjectMapper json, int bodyMs) {
        this.json = json;
        this.bodyMs = bodyMs;
    }

    void add(RoutesConfig routes) {
        Routes.get(routes, "/api/numbers", context -> Routes.answer(context, json, new Calculations(numbers.all())));
        routes.post("/api/numbers/{id}", this::work);
    }

    private void work(Context context) {
        String id = context.pathParam("id");
        if (numbers.info(id).isEmpty()) {
            throw new BadRequest(Problem.of(404, numbers.unknown(Shown.of(id))));
        }
        JsonNode body = Body.object(Body.json(context, bodyMs), json, EXAMPLE);
        try {
            Routes.answer(context, json, numbers.work(id, given(body)));
        } catch (UnusableInputs unusable) {
            throw new BadRequest(Problem.of(400, Problem.listed(unusable.faults())));
        }
    }

    private static Map<String, Given> given(JsonNode body) {
        Map<String, Given> given = new LinkedHashMap<>();
        body.properties().forEach(field -> {
            if (!field.getValue().isNull()) {
                given.put(Shown.of(field.getKey()), given(field.getValue(), true));
            }
        });
        return given;
    }

    private static Given given(JsonNode value, boolean mayHoldMore) {
        if (value.isNumber()) {
            return new Given.Number(value.doubleValue());
        }
        if (value.isTextual()) {
            return new Given.Text(Shown.of(value.textValue()));
        }
        if (value.isArray() && mayHoldMore) {
            List<Given> entries = new ArrayList<>();
            value.forEach(entry -> entries.add(given(entry, false)));
            return new Given.Many(entries);
        }
        return new Given.Other(JsonReader.kind(value));
    }
}
