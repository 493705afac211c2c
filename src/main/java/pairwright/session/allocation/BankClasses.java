package pairwright.session.allocation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pairwright.locker.PhantomSwitch;

/**
 * Banks of which it does not matter which is which, taken together. Those whose supply may be too small stay apart, since how current gathers in each of them matters; so do
 * not those with a switch for each channel, or with none: of them only the channels count.
 */
final class BankClasses {
    /**
     * @param members indexes of the banks
     * @param channels how many there are of each group: in one member where one switch is for all of its channels, else in all
     * @param supplyTenthMa null where it is enough
     * @param channelTenthMa null where it is enough
     */
    record BankClass(List<Integer> members, PhantomSwitch phantom, Map<String, Integer> channels, Integer supplyTenthMa, Integer channelTenthMa) {
        /** How many times there is what {@link #channels} counts. */
        int times() {
            return phantom == PhantomSwitch.BANK ? members.size() : 1;
        }

        boolean serves(FeedKind kind, String group) {
            return kind.groups().contains(group)
                    && (kind.phantom() != PhantomNeed.NEEDED || phantom != PhantomSwitch.NONE && (channelTenthMa == null || kind.drawTenthMa() <= channelTenthMa));
        }

        boolean isTwinOf(BankClass other) {
            return phantom == other.phantom && supplyTenthMa != null && supplyTenthMa.equals(other.supplyTenthMa) && channels.equals(other.channels)
                    && (channelTenthMa == null ? other.channelTenthMa == null : channelTenthMa.equals(other.channelTenthMa));
        }
    }

    private record Alike(PhantomSwitch phantom, Map<String, Integer> channels, Integer channelTenthMa, int apart) {
    }

    private final List<BankClass> classes = new ArrayList<>();

    BankClasses(Problem problem) {
        int mostDrawTenthMa = problem.seats().stream().flatMap(seat -> seat.choices().stream()).flatMap(choice -> choice.feeds().stream()).mapToInt(Feed::drawTenthMa).max().orElse(0);
        Map<Alike, List<Integer>> alike = new LinkedHashMap<>();
        for (int index = 0; index < problem.banks().size(); index++) {
            Bank bank = problem.banks().get(index);
            Integer supply = bank.phantom() == PhantomSwitch.NONE ? null : ifShort(bank.supplyTenthMa(), (long) mostDrawTenthMa * bank.channels().size());
            Integer channel = bank.phantom() == PhantomSwitch.NONE ? null : ifShort(bank.channelTenthMa(), mostDrawTenthMa);
            Map<String, Integer> channels = bank.phantom() == PhantomSwitch.BANK ? counted(bank) : Map.of();
            alike.computeIfAbsent(new Alike(bank.phantom(), channels, channel, supply == null ? -1 : index), any -> new ArrayList<>()).add(index);
        }
        alike.forEach((key, members) -> {
            Map<String, Integer> channels = new TreeMap<>(key.channels());
            if (key.phantom() != PhantomSwitch.BANK) {
                members.forEach(member -> counted(problem.banks().get(member)).forEach((group, count) -> channels.merge(group, count, Integer::sum)));
            }
            classes.add(new BankClass(List.copyOf(members), key.phantom(), channels, key.apart() < 0 ? null : problem.banks().get(key.apart()).supplyTenthMa(), key.channelTenthMa()));
        });
    }

    List<BankClass> all() {
        return classes;
    }

    boolean currentMatters() {
        return classes.stream().anyMatch(one -> one.supplyTenthMa() != null || one.channelTenthMa() != null);
    }

    private static Integer ifShort(Integer tenthMa, long most) {
        return tenthMa == null || tenthMa >= most ? null : tenthMa;
    }

    private static Map<String, Integer> counted(Bank bank) {
        Map<String, Integer> counted = new TreeMap<>();
        bank.channels().forEach(group -> counted.merge(group, 1, Integer::sum));
        return counted;
    }
}
