package pairwright.lab;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** All kinds of exercises. */
public final class Kinds {
    private final Map<String, Kind> byId;

    public Kinds() {
        this(List.of(new ChooseKind(), new TwoKind(), new PlaceKind(), new FaultsKind(), new ReckonKind(), new CurvesKind(), new CompareKind(), new MendKind(), new SessionKind(),
                new BuyKind()));
    }

    Kinds(List<Kind> kinds) {
        byId = kinds.stream().collect(Collectors.toMap(kind -> kind.info().id(), Function.identity(), (one, other) -> one, LinkedHashMap::new));
    }

    /** In the order they are shown. */
    public List<Kind> all() {
        return List.copyOf(byId.values());
    }

    /** Empty for an id there is not. */
    public Optional<Kind> kind(String id) {
        return Optional.ofNullable(byId.get(id));
    }
}
