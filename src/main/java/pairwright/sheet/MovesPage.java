package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pairwright.advice.Knowledge;
import pairwright.advice.MoveFinder;
import pairwright.advice.SetUpJudge;
import pairwright.advice.UnusableQuestion;
import pairwright.drawing.Reader;
import pairwright.model.Answer;
import pairwright.model.Complaint;
import pairwright.model.Fault;
import pairwright.model.Moves;
import pairwright.model.MovesRequest;
import pairwright.model.Naming;
import pairwright.model.Option;
import pairwright.model.Request;
import pairwright.model.RuledOut;
import pairwright.model.Setup;

/** A set-up as it stands, and what to move when something is heard that is not wanted. */
public final class MovesPage {
    private MovesPage() {
    }

    /** The page, or with {@code part=moves} the moves alone. Without {@code heard} it shows the set-up as it stands. */
    public static Page of(AtQuestion at) {
        Visit visit = at.visit();
        AskQuery query = at.query();
        SetUpQuery setUp = SetUpQuery.read(visit);
        List<Fault> faults = new ArrayList<>(query.faults());
        faults.addAll(setUp.faults());
        if (visit.first("mic") == null) {
            faults.add(new Fault("mic", "no microphone stands yet. Ask for what you record, then say below one of the answers what you hear"));
        }
        Used used = new Used(at.knowledge());
        String part = visit.first("part");
        String heard = visit.first("heard");
        MovesView view = null;
        try {
            if (heard == null) {
                SetUpJudge.Judgement judged = new SetUpJudge(used, at.atHand()).judge(query.request(), setUp.setup());
                view = view(used.last(), query.request(), judged.question(), judged.option(), judged.ruledOut(), null, at);
            } else {
                Moves moves = new MoveFinder(used, at.atHand()).find(new MovesRequest(query.request(), setUp.setup(), heard));
                view = view(used.last(), query.request(), moves.question(), moves.option(), moves.ruledOut(), moves, at);
            }
        } catch (UnusableQuestion unusable) {
            unusable.faults().stream().filter(fault -> !fault.at().equals("/option")).forEach(faults::add);
        }
        if (!faults.isEmpty()) {
            return AskPage.fault(at, faults, part);
        }
        return new Page(200, part != null ? at.html().fill("moves-part.jte", Map.of("view", view))
                : at.html().fill("moves.jte", Map.of("shell", at.html().shell(view.heading(), "ask", visit), "view", view)));
    }

    private static MovesView view(Knowledge now, Request asked, Answer.Asked question, Option option, List<RuledOut> ruledOut, Moves moves, AtQuestion at) {
        Visit visit = at.visit();
        Reader reader = visit.reader();
        Request request = AnswerViews.shortest(now, asked, question.meant());
        List<Param> query = AskQuery.written(request);
        List<Param> hidden = AnswerViews.hidden(query, reader);
        OptionViews views = new OptionViews(now, question.meant(), at, hidden);
        Setup stands = Setup.of(option);
        OptionView shown = views.of(option, "now", visit.to(Param.address("/set-up", Param.joined(query, SetUpQuery.written(stands)))));
        List<MovesView.Move> list = new ArrayList<>();
        if (moves != null) {
            boolean pair = option.mics().size() > 1;
            for (Moves.Move move : moves.moves()) {
                boolean stays = move.option() == null || Setup.of(move.option()).equals(stands);
                list.add(new MovesView.Move(Choices.named(move.by().id()), pair && move.mic() > 0 ? "mic " + move.mic() : "", reader.sentence(move.says()),
                        reader.sentence(move.why()), reader.sentence(move.change()), reader.sentence(move.effect()),
                        move.scorePoints() == null ? "" : Points.signed(move.scorePoints(), reader),
                        move.scorePoints() != null && move.scorePoints() < 0,
                        move.newCautions().stream().map(caution -> views.caution(caution, pair)).toList(),
                        stays ? null : visit.to(Param.address("/moves", Param.joined(query, SetUpQuery.written(Setup.of(move.option())))))));
            }
        }
        String heading = moves == null ? "Set up like this" : "It sounds: " + Naming.small(moves.name());
        return new MovesView(heading, QuestionWords.of(now.catalogue(), question.meant(), reader), visit.to(Param.address("/", query)),
                moves == null ? "" : reader.sentence(moves.says()), moves != null, list,
                moves == null ? List.of() : moves.notes().stream().map(reader::sentence).toList(), shown,
                ruledOut.stream().map(out -> AnswerViews.out(out, now.catalogue(), visit)).toList(),
                Choices.of(now.catalogue().complaints().values(), Complaint::id, Complaint::name, moves == null ? List.of() : List.of(moves.heard())),
                visit.to(Param.address("/moves", Param.joined(query, SetUpQuery.written(stands)))));
    }
}
