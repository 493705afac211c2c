package pairwright.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import pairwright.advice.Advisor;
import pairwright.advice.AtHand;
import pairwright.advice.Knowledge;
import pairwright.advice.SetUpJudge;
import pairwright.advice.UnusableQuestion;
import pairwright.catalogue.Shown;
import pairwright.drawing.Reader;
import pairwright.model.Answer;
import pairwright.model.Fault;
import pairwright.model.MicType;
import pairwright.model.Naming;
import pairwright.model.Option;
import pairwright.model.Placement;
import pairwright.model.PowerNeed;
import pairwright.model.Request;

/** One option as a sheet to hang up. Safe to share between threads. */
public final class SetUpPage {
    private final Supplier<Knowledge> knowledge;
    private final AtHand atHand;
    private final Html html;

    public SetUpPage(Supplier<Knowledge> knowledge, AtHand atHand, Html html) {
        this.knowledge = knowledge;
        this.atHand = atHand;
        this.html = html;
    }

    /**
     * The sheet of option {@code option} of the answer, or of the microphones as they stand in {@code mic}.
     *
     * @return 200, or 400 with every fault
     */
    public Page page(Visit visit) {
        AskQuery query = AskQuery.read(visit);
        SetUpQuery setUp = SetUpQuery.read(visit);
        List<Fault> faults = new ArrayList<>(query.faults());
        faults.addAll(setUp.faults());
        Used used = new Used(knowledge);
        String page = null;
        try {
            if (visit.first("mic") != null) {
                SetUpJudge.Judgement judged = new SetUpJudge(used, atHand).judge(query.request(), setUp.setup());
                page = sheet(used.last(), query.request(), judged.question(), judged.option(), SetUpQuery.written(setUp.setup()), visit);
            } else {
                Answer answer = new Advisor(used, atHand).ask(query.request());
                Option option = option(answer, visit.first("option"), faults);
                page = option == null ? null : sheet(used.last(), query.request(), answer.question(), option,
                        List.of(new Param("option", Integer.toString(option.rank()))), visit);
            }
        } catch (UnusableQuestion unusable) {
            unusable.faults().stream().filter(fault -> !fault.at().equals("/option")).forEach(faults::add);
        }
        return faults.isEmpty() ? new Page(200, page) : AskPage.fault(html, visit, faults, null);
    }

    private static Option option(Answer answer, String named, List<Fault> faults) {
        Integer rank = named == null ? Integer.valueOf(1) : AskQuery.WHOLE.matcher(named).matches() ? Integer.valueOf(named) : null;
        Option found = rank == null ? null : answer.options().stream().filter(option -> option.rank() == rank).findFirst().orElse(null);
        if (found == null) {
            faults.add(new Fault("option", (named == null ? "there is no option" : "there is no option \"" + Shown.of(named) + "\"")
                    + (answer.options().isEmpty() ? ": nothing fits this question. Ask it first" : ". Give 1 to " + answer.options().size())));
        }
        return found;
    }

    private String sheet(Knowledge now, Request asked, Answer.Asked question, Option option, List<Param> which, Visit visit) {
        Reader reader = visit.reader();
        List<Param> query = AskQuery.written(AnswerViews.shortest(now, asked, question.meant()));
        OptionView view = new OptionViews(now, question.meant(), visit, query).of(option, "sheet", null);
        List<String> fetch = new ArrayList<>();
        option.mics().forEach(mic -> fetch(now.catalogue().mics().get(mic.micType()), mic, reader, fetch));
        String words = QuestionWords.of(now.catalogue(), question.meant(), reader);
        String date = reader.date(LocalDate.now());
        return html.fill("set-up.jte", Map.of("shell", html.shell("Set-up: " + words, "ask", visit), "view",
                new SetUpView(words, question.words(), date, view, fetch, now.catalogue().sources().get(question.meant().source()).care().stream()
                        .map(reader::sentence).toList(), visit.to(Param.address("/", query)), visit.to(Param.address("/set-up", Param.joined(query, which))))));
    }

    /** What has to be carried into the room for one microphone, and what to switch. */
    private static void fetch(MicType type, Placement mic, Reader reader, List<String> fetch) {
        fetch.add(mic.name());
        switch (mic.mount()) {
            case STAND -> fetch.add("Straight stand" + height(mic, reader));
            case BOOM -> fetch.add("Boom stand" + height(mic, reader) + ", weight over a leg");
            case OVERHEAD -> fetch.add("Tall stand" + height(mic, reader) + ", sandbag");
            case CLIP -> fetch.add("Clip for the instrument");
            case FLOOR -> fetch.add("Nothing to hold it: it lies on the floor or a plate");
            case INSIDE -> fetch.add("Short stand, pillow or holder for the inside");
            case CONTACT -> fetch.add("What fixes the pickup");
            default -> {
            }
        }
        fetch.add(mic.channels() == 1 ? "1 microphone lead" : mic.channels() + " microphone leads");
        if (SetUpWords.wired(mic)) {
            fetch.add("Lead from the instrument");
        }
        boolean cell = type.power() == PowerNeed.PHANTOM_OR_BATTERY;
        fetch.add(mic.phantom() ? "Phantom power on for the " + Naming.small(mic.name()) + ", with the channel down" + (cell ? ", or a fresh cell in it" : "")
                : "Phantom power off for the " + Naming.small(mic.name()) + (cell ? ", a fresh cell in it and one to spare" : ""));
        if (type.power() == PowerNeed.OWN_SUPPLY) {
            fetch.add("Its own power supply with the cable that belongs to it");
        }
        if (mic.pad()) {
            fetch.add("Pad of " + Math.round(mic.padDb()) + " dB in");
        }
        if (mic.invertPolarity()) {
            fetch.add("Polarity inverted on its channel");
        }
        if (mic.predicted().gainDb() != null) {
            fetch.add("Gain about " + Math.round(mic.predicted().gainDb()) + " dB to begin with");
        }
    }

    private static String height(Placement mic, Reader reader) {
        return mic.heightM() == null ? "" : ", microphone " + reader.distance(mic.heightM()) + " above the floor";
    }
}
