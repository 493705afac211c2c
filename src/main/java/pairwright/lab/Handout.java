package pairwright.lab;

import java.util.List;

/**
 * What a bench gets. It holds nothing that tells the answer.
 *
 * @param title of this exercise
 * @param cautions what to mind before anything is touched; empty on paper
 * @param situation sentences
 * @param shown tables and pictures
 * @param items what is asked, in order
 */
public record Handout(String title, List<String> cautions, List<String> situation, List<Shown> shown, List<Item> items) {
    public Handout {
        cautions = cautions.stream().map(Signs::minus).toList();
        situation = situation.stream().map(Signs::minus).toList();
        shown = List.copyOf(shown);
        items = List.copyOf(items);
    }
}
