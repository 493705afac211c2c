package pairwright.sheet;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import pairwright.catalogue.Shown;
import pairwright.lab.Candidates;
import pairwright.lab.DoesNotFit;
import pairwright.lab.Fits;
import pairwright.lab.KindInfo;
import pairwright.lab.Wanted;
import pairwright.locker.Act;
import pairwright.locker.LockerFault;
import pairwright.model.Fault;
import pairwright.sheet.ReadingParts.Link;
import pairwright.sheet.UnitWritePages.Done;

/** Making exercises for a class, and booking the microphones they need. */
public final class ExerciseMakePage {
    private static final int UNUSABLE = 400;
    private static final int NOT_NOW = 409;
    private static final int USED_OTHERWISE = 422;
    private static final List<String> FIELDS = List.of("kind", "level", "benches", "from", "until", "opensAt", "seed");

    private ExerciseMakePage() {
    }

    /**
     * What the page shows.
     *
     * @param instead what can be had where what was wanted cannot; each fills in the form
     */
    public record Content(SendForm form, List<Link> instead, String zone) {
    }

    /** The form, filled in with what the address says. */
    public static Page of(AtLab lab) {
        SendForm form = form(lab);
        List<FormField> filled = form.fields().stream().map(field -> lab.at().visit().first(field.name()) == null ? field : field.value(lab.at().visit().first(field.name()))).toList();
        return page(lab, 200, new SendForm(form.id(), form.action(), form.key(), form.hidden(), filled, form.faults()), List.of());
    }

    private static SendForm form(AtLab lab) {
        List<Choice> kinds = lab.desk().kinds().stream().map(info -> new Choice(info.id(), info.name(), false)).toList();
        List<Choice> levels = IntStream.rangeClosed(1, KindInfo.LEVELS).mapToObj(level -> new Choice(Integer.toString(level), Integer.toString(level), false)).toList();
        return SendForm.to(lab.at().visit(), AtLab.SETS + "/new", "make", List.of(
                FormField.choice("kind", "What is practised", kinds).needed(),
                FormField.choice("level", "Level", levels).value("1").hint("1 is the easiest. What each asks is told under Lab.").needed(),
                FormField.line("benches", "Benches").hint("How many work at one time, 1 to " + Wanted.MOST_BENCHES + ". Each gets an exercise of its own, as hard as the others.").needed(),
                FormField.moment("from", "The class begins").hint("With a beginning and an end, microphones that are needed are booked for it."),
                FormField.moment("until", "It ends"),
                FormField.moment("opensAt", "The keys open").hint("From then on everybody may see what is right. Left empty, they stay shut until you open them."),
                FormField.line("seed", "Drawn from").hint("Any words; the same words draw the same exercises again. Left empty, it is something nobody guesses.")));
    }

    private static Page page(AtLab lab, int status, SendForm form, List<Link> instead) {
        LabFrame frame = LabFrame.below(lab.at().html(), lab.at().visit(), "Make exercises for a class", List.of(lab.at().at().link(AtLab.SETS, "Classes")), "");
        return lab.page(status, "make", frame, new Content(form, instead, lab.at().moments().zone()));
    }

    /** Makes what a form says, or shows it again with all that is wrong. */
    public static Done made(AtLab lab, Sent sent, Act act) {
        SendForm form = form(lab).typed(sent);
        List<Fault> faults = new ArrayList<>();
        Wanted wanted = new Wanted(sent.first("kind"), sent.first("seed"), number(sent, "level", faults), number(sent, "benches", faults), moment(lab, sent, "from", false, faults),
                moment(lab, sent, "until", true, faults), moment(lab, sent, "opensAt", false, faults));
        try {
            Candidates drawn = lab.desk().draw(wanted);
            if (faults.isEmpty()) {
                String id = lab.at().locker().change(act, changes -> lab.desk().make(changes, drawn, lab.who()).id()).text();
                return new Done(AtLab.SETS + "/" + id + "?done=made", null);
            }
        } catch (LockerFault.Unusable wrong) {
            // what could not be read is told as that, not as missing
            wrong.faults().stream().filter(fault -> faults.stream().noneMatch(one -> one.at().equals(fault.at()))).map(fault -> told(lab, fault, wanted)).forEach(faults::add);
        } catch (DoesNotFit refused) {
            List<Link> instead = lab.desk().instead(refused).stream().map(fits -> lab.at().at().link(filled(fits, sent), capital(fits.says()))).toList();
            return new Done(null, page(lab, NOT_NOW, form.wrong(refused.getMessage()), instead));
        } catch (LockerFault.Taken taken) {
            return new Done(null, page(lab, NOT_NOW, form.wrong(taken.getMessage()), List.of()));
        } catch (LockerFault.KeyUsedOtherwise other) {
            return new Done(null, page(lab, USED_OTHERWISE, form.underAnotherKey()
                    .wrong("This form was sent before with something else in it, and that was done. Press the button again if this is to be done as well"), List.of()));
        }
        return new Done(null, page(lab, UNUSABLE, form.wrong(faults), List.of()));
    }

    /** Moments as the reader writes them. */
    private static Fault told(AtLab lab, Fault fault, Wanted wanted) {
        Moments moments = lab.at().moments();
        if (fault.at().equals("/opensAt") && wanted.opensAt() != null) {
            return new Fault(fault.at(), "the keys would be open at once: " + moments.moment(wanted.opensAt()) + " is over. Give a time to come, or leave it out");
        }
        return fault.at().equals("/until") && wanted.from() != null && wanted.until() != null
                ? new Fault(fault.at(), "it ends " + moments.moment(wanted.until()) + ", not after it begins. Let it end later") : fault;
    }

    private static String capital(String says) {
        int letter = says.startsWith("\"") ? 1 : 0;
        return says.substring(0, letter) + Choices.capital(says.substring(letter));
    }

    /** The form with something else in it. */
    private static String filled(Fits fits, Sent sent) {
        StringBuilder address = new StringBuilder(AtLab.SETS + "/new?kind=" + Visit.escaped(fits.kind()) + "&level=" + fits.level() + "&benches=" + fits.benches());
        FIELDS.subList(FIELDS.indexOf("from"), FIELDS.size()).stream().filter(name -> sent.first(name) != null)
                .forEach(name -> address.append('&').append(name).append('=').append(Visit.escaped(sent.first(name))));
        return address.toString();
    }

    private static Integer number(Sent sent, String name, List<Fault> faults) {
        String text = sent.first(name);
        if (text != null && !text.matches("\\d{1,6}")) {
            faults.add(new Fault("/" + name, "\"" + Shown.of(text) + "\" is no whole number. Give one"));
            return null;
        }
        return text == null ? null : Integer.valueOf(text);
    }

    static Instant moment(AtLab lab, Sent sent, String name, boolean isEnd, List<Fault> faults) {
        if (sent.first(name) == null) {
            return null;
        }
        TypedMoment typed = TypedMoment.parse(sent.first(name), lab.at().clock().getZone(), isEnd);
        if (typed.fault() != null) {
            faults.add(new Fault("/" + name, typed.fault()));
            return null;
        }
        return typed.at().toInstant();
    }
}
