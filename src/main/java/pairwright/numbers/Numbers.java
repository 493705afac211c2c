package pairwright.numbers;

import java.util.List;
import java.util.Map;
import java.util.Optional;
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

    /** What each says of itself. */
    public List<CalculationInfo> all() {
        return calculations.stream().map(Calculation::info).toList();
    }

    /** What one says of itself; empty for an id there is not. */
    public Optional<CalculationInfo> info(String id) {
        return all().stream().filter(info -> info.id().equals(id)).findFirst();
    }

    /** What to tell somebody who asked for a calculation there is not. */
    public String unknown(String id) {
        return "There is no calculation \"" + id + "\". " + Nearest.remedy(id, all().stream().map(CalculationInfo::id).toList());
    }

    /**
     * Works a calculation; the order of the inputs does not matter.
     *
     * @throws UnusableInputs with every fault
     * @throws IllegalArgumentException for an id there is not
     */
    public Worked work(String id, Map<String, Given> given) {
        Calculation calculation = calculations.stream().filter(one -> one.info().id().equals(id)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException(unknown(id)));
        Inputs in = Inputs.read(calculation.info(), given);
        calculation.check(in);
        in.orThrow();
        Working out = new Working();
        calculation.work(in, out);
        return out.worked(calculation.info(), in);
    }
}
