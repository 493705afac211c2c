package pairwright.http;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.function.Function;

/** Recordings are measured, for programs; nothing of them is kept. */
final class ListenRoutes {
    private final ListenWork work;
    private final ObjectMapper json;

    ListenRoutes(ListenWork work, ObjectMapper json) {
        this.work = work;
        this.json = json;
    }

    void add(RoutesConfig routes) {
        routes.post("/api/listen/source", context -> answer(context, of -> {
            ListenWork.SourceHeard heard = work.source(of);
            return ListenView.of(heard.measured(), heard.traits());
        }));
        routes.post("/api/listen/pair", context -> answer(context, of -> ListenView.of(work.pairs(of))));
        routes.post("/api/listen/change", context -> answer(context, of -> {
            ListenWork.ChangeHeard heard = work.change(of);
            return ListenView.of(heard.before(), heard.after(), heard.change());
        }));
        routes.post("/api/listen/bleed", context -> answer(context, of -> {
            ListenWork.NeighbourHeard heard = work.bleed(of);
            return ListenView.of(heard.own(), heard.neighbour(), heard.bleed());
        }));
    }

    private void answer(Context context, Function<Context, Object> work) {
        new Query(context).check();
        context.header("Cache-Control", "no-store");
        Routes.answer(context, json, work.apply(context));
    }
}
