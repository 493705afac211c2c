package pairwright.advice;

import java.util.List;
import pairwright.model.Request;
import pairwright.rules.Placed;
import pairwright.rules.Setting;

/** What the rules are given for one question, for whoever measures a part of an ask. */
public record AskCase(Setting setting, List<Placed> placed) {
    /** The placements of a question that a source answers. */
    public static AskCase of(Request request, Knowledge now) {
        Scene scene = Scene.of(Questions.of(request, now.catalogue(), now.reader()).question(), now.catalogue());
        return new AskCase(scene.setting(), Placements.of(scene));
    }
}
