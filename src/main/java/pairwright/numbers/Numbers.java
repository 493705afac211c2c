package pairwright.numbers;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pairwright.model.Nearest;

/** All calculations. */
public final class Numbers {
    private final List<Calculation> calculations = List.of(
            new LevelAtDistance(),
            new ProximityRise(),
            new CombFilter(),
            new CriticalDistance(),
            new NoiseFloor(),
            new GainNeeded(),
            new HeadroomLeft(),
            new RibbonLoading(),
            new PhantomBudget(),
            new RecordingAngle(),
            new MidSidePair(),
            new ExposureDose(),
            new StandTipping(),
            new NullAngles(),
            new TravelTime(),
            new SourceSpacing());
    private final Map<String, Entry> byId = calculations.stream().map(one -> new Entry(one, one.info()))
            .collect(Collectors.toMap(entry -> entry.info().id(), entry -> entry, (one, other) -> one, LinkedHashMap::new));

    private record Entry(Calculation calculation, CalculationInfo info) {
    }

    /** What each says of itself. */
    public List<CalculationInfo> all() {
        return byId.values().stream().map(Entry::info).toList();
    }

    /** What one says of itself; empty for an id there is not. */
    public Optional<CalculationInfo> info(String id) {
        return Optional.ofNullable(byId.get(id)).map(Entry::info);
    }

    /** What to tell somebody who asked for a calculation there is not. */
    public String unknown(String id) {
        return "There is no calculation \"" + id + "\". " + Nearest.remedy(id, List.copyOf(byId.keySet()));
    }

    /**
     * Works a calculation; the order of the inputs does not matter.
     *
     * @throws UnusableInputs with every fault
     * @throws IllegalArgumentException for an id there is not
     */
    public Worked work(String id, Map<String, Given> given) {
        Entry entry = byId.get(id);
        if (entry == null) {
            throw new IllegalArgumentException(unknown(id));
        }
        Inputs in = Inputs.read(entry.info(), given);
        entry.calculation().check(in);
        in.orThrow();
        Working out = new Working();
        entry.calculation().work(in, out);
        return out.worked(entry.info(), in);
    }
}
