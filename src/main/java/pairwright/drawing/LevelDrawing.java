package pairwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pairwright.model.Catalogue;
import pairwright.model.LeadLevel;
import pairwright.model.Option;
import pairwright.model.Placement;
import pairwright.model.Predicted;
import pairwright.model.Question;

/** Between noise and limit: where the running level and the loudest peak of each microphone lie, on one ruled scale. */
public final class LevelDrawing {
    private static final double HEAD = 50;
    private static final double RULED = 270;
    private static final double LEFT = 34;
    private static final double STEM = 16;
    private static final double LABEL = 34;
    private static final double EVERY_DB = 10;
    private static final double FINE_DB = 2;
    /** Levels nearer than this are one mark. */
    private static final double ONE_MARK_DB = 1;

    private LevelDrawing() {
    }

    /**
     * One column for each microphone that hears air, in dB SPL; for a lead alone, in dBu. Null where no level is known, as for a contact.
     * The limit is drawn as a true peak, pad included, so that what is left to it can be read off.
     */
    public static Drawing of(Catalogue catalogue, Question question, Option option, String key, Reader reader) {
        List<Column> columns = new ArrayList<>();
        for (int i = 0; i < option.mics().size(); i++) {
            Column column = column(Mics.name(option, i), option.mics().get(i), i == 0 ? Look.ONE : Look.TWO, reader);
            if (column != null) {
                columns.add(column);
            }
        }
        LeadLevel lead = catalogue.sources().get(question.source()).lead();
        if (columns.isEmpty() && lead != null) {
            columns.add(onALead(Mics.name(option, 0), option.mics().get(0), lead, reader));
            return draw(columns, "dBu", key, reader);
        }
        return columns.isEmpty() ? null : draw(columns, "dB SPL", key, reader);
    }

    /**
     * A level that is marked.
     *
     * @param value where on the scale
     * @param words as it is written beside it
     */
    private record Mark(double value, String words) {
    }

    /** A stretch of the scale: from where to where, in two values, and its words. */
    private record Stretch(double[] fromTo, String words, boolean trouble) {
    }

    private record Column(String name, Look look, List<Mark> marks, List<Stretch> stretches, String says) {
    }

    private static Column column(String name, Placement mic, Look look, Reader reader) {
        Predicted predicted = mic.predicted();
        if (predicted.typicalDbSpl() == null || predicted.peakDbSpl() == null) {
            return null;
        }
        List<Mark> marks = new ArrayList<>();
        List<Stretch> stretches = new ArrayList<>();
        double typicalDbSpl = predicted.typicalDbSpl();
        double peakDbSpl = predicted.peakDbSpl();
        StringBuilder says = new StringBuilder(name).append(": running level ").append(whole(typicalDbSpl, reader)).append(" dB SPL, loudest peak ")
                .append(whole(peakDbSpl, reader)).append(" dB SPL");
        marks.add(new Mark(typicalDbSpl, "running " + whole(typicalDbSpl, reader)));
        marks.add(new Mark(peakDbSpl, "peak " + whole(peakDbSpl, reader)));
        if (predicted.headroomDb() != null) {
            double limitDbSpl = peakDbSpl + predicted.headroomDb();
            String pad = mic.padDb() > 0 ? " with pad" : "";
            marks.add(new Mark(limitDbSpl, "limit" + pad + " " + whole(limitDbSpl, reader)));
            String left = inHand(predicted.headroomDb(), reader);
            stretches.add(new Stretch(new double[]{peakDbSpl, limitDbSpl}, left, predicted.headroomDb() < 0));
            says.append(", limit").append(pad).append(' ').append(whole(limitDbSpl, reader)).append(" dB SPL as a peak, so ").append(left);
        }
        if (predicted.noiseDba() != null && predicted.signalToNoiseDb() != null) {
            double heardDba = predicted.noiseDba() + predicted.signalToNoiseDb();
            if (Math.abs(heardDba - typicalDbSpl) > ONE_MARK_DB) {
                marks.add(new Mark(heardDba, "picked up " + whole(heardDba, reader) + " dBA"));
            }
            marks.add(new Mark(predicted.noiseDba(), "noise " + whole(predicted.noiseDba(), reader) + " dBA"));
            String over = predicted.signalToNoiseDb() >= 0 ? whole(predicted.signalToNoiseDb(), reader) + " dB over noise"
                    : whole(-predicted.signalToNoiseDb(), reader) + " dB under noise";
            stretches.add(new Stretch(new double[]{predicted.noiseDba(), heardDba}, over, predicted.signalToNoiseDb() < 0));
            says.append("; noise ").append(whole(predicted.noiseDba(), reader)).append(" dBA, the running level as it is picked up ")
                    .append(whole(heardDba, reader)).append(" dBA, so ").append(over);
        }
        return new Column(name, look, marks, stretches, Words.sentence(says.toString()));
    }

    private static Column onALead(String name, Placement mic, LeadLevel lead, Reader reader) {
        List<Mark> marks = new ArrayList<>(List.of(new Mark(lead.typicalDbu(), "running " + whole(lead.typicalDbu(), reader)),
                new Mark(lead.peakDbu(), "peak " + whole(lead.peakDbu(), reader))));
        List<Stretch> stretches = new ArrayList<>();
        String says = name + ": running level " + whole(lead.typicalDbu(), reader) + " dBu, loudest peak " + whole(lead.peakDbu(), reader) + " dBu";
        Double headroomDb = mic.predicted().headroomDb();
        if (headroomDb != null) {
            double limitDbu = lead.peakDbu() + headroomDb;
            String pad = mic.padDb() > 0 ? " with pad" : "";
            marks.add(new Mark(limitDbu, "limit" + pad + " " + whole(limitDbu, reader)));
            stretches.add(new Stretch(new double[]{lead.peakDbu(), limitDbu}, inHand(headroomDb, reader), headroomDb < 0));
            says += ", limit" + pad + " " + whole(limitDbu, reader) + " dBu, so " + inHand(headroomDb, reader);
        }
        return new Column(name, Look.ONE, marks, stretches, Words.sentence(says));
    }

    private static String inHand(double headroomDb, Reader reader) {
        return headroomDb >= 0 ? whole(headroomDb, reader) + " dB in hand" : whole(-headroomDb, reader) + " dB too loud";
    }

    private static String whole(double value, Reader reader) {
        return Words.number(value, 0, reader);
    }

    private static Drawing draw(List<Column> columns, String unit, String key, Reader reader) {
        double least = columns.stream().flatMap(column -> column.marks().stream()).mapToDouble(Mark::value).min().orElseThrow();
        double most = columns.stream().flatMap(column -> column.marks().stream()).mapToDouble(Mark::value).max().orElseThrow();
        double from = EVERY_DB * Math.floor((least - 2) / EVERY_DB);
        double to = EVERY_DB * Math.ceil((most + 2) / EVERY_DB);
        double bottom = HEAD + RULED;
        Scale scale = new Scale(false, from, to, bottom, HEAD);
        Svg svg = new Svg(key, Svg.PLOT_WIDTH, bottom + 12, "Levels between noise and limit", String.join(" ", columns.stream().map(Column::says).toList()));
        ruler(svg, scale, unit, reader);
        double width = (Svg.PLOT_WIDTH - LEFT) / columns.size();
        for (int i = 0; i < columns.size(); i++) {
            column(svg, columns.get(i), scale, LEFT + i * width, width);
        }
        return svg.drawing();
    }

    private static void ruler(Svg svg, Scale scale, String unit, Reader reader) {
        StringBuilder fine = new StringBuilder();
        StringBuilder lines = new StringBuilder();
        boolean every = (scale.most() - scale.least()) / EVERY_DB <= 10;
        for (double value = scale.least(); value <= scale.most() + 1e-9; value += FINE_DB) {
            boolean ten = Math.abs(value / EVERY_DB - Math.rint(value / EVERY_DB)) < 1e-9;
            Plot.line(fine, LEFT - (ten ? 7 : 3), scale.at(value), LEFT, scale.at(value));
            if (ten && (every || Math.abs(Math.rint(value / EVERY_DB)) % 2 == 0)) {
                Plot.line(lines, LEFT, scale.at(value), Svg.PLOT_WIDTH - 1, scale.at(value));
                svg.leafText("text", Words.number(value, 0, reader), "class", "label faint", "x", LEFT - 9, "y", scale.at(value) + 4, "text-anchor", "end",
                        "font-size", Type.SMALL, "fill", "#4a4a46");
            }
        }
        Plot.line(fine, LEFT, scale.at(scale.least()), LEFT, scale.at(scale.most()));
        svg.leaf("path", "class", "grid", "d", lines, "fill", "none", "stroke", "#c9c5ba", "stroke-width", 0.7);
        svg.leaf("path", "class", "axis", "d", fine, "fill", "none", "stroke", "#4a4a46");
        List<String> words = Type.lines(unit, Type.SMALL, 20);
        for (int i = 0; i < words.size(); i++) {
            svg.leafText("text", words.get(i), "class", "label faint", "x", 2, "y", HEAD - 12 - (words.size() - 1 - i) * Type.SMALL, "font-size", Type.SMALL, "fill",
                    "#4a4a46");
        }
    }

    private static void column(Svg svg, Column column, Scale scale, double left, double width) {
        double stem = left + STEM;
        Look look = column.look();
        List<String> name = Type.lines(column.name(), Type.SIZE, width - STEM);
        Plot.lines(svg, name, stem - 8, HEAD - 10 - name.size() * Type.SIZE * Type.LINE / 2, "start", "label");
        StringBuilder ticks = new StringBuilder();
        List<Plot.End> labels = new ArrayList<>();
        for (Mark mark : column.marks()) {
            Plot.line(ticks, stem - 6, scale.at(mark.value()), stem + 6, scale.at(mark.value()));
            labels.add(new Plot.End(look, List.of(mark.words()), scale.at(mark.value())));
        }
        for (Stretch stretch : column.stretches()) {
            double from = scale.at(stretch.fromTo()[0]);
            double to = scale.at(stretch.fromTo()[1]);
            String style = stretch.trouble() ? "danger" : look.style();
            svg.leaf("rect", "class", style, "x", stem - 2.5, "y", Math.min(from, to), "width", 5, "height", Math.abs(from - to), "fill",
                    stretch.trouble() ? "#9b1c1c" : look.colour());
            labels.add(new Plot.End(null, List.of(stretch.words()), (from + to) / 2));
        }
        svg.leaf("path", "class", look.style(), "d", ticks, "fill", "none", "stroke", look.colour(), "stroke-width", 2);
        labels.sort(Comparator.comparingDouble(Plot.End::y));
        double[] middles = Plot.apart(labels, HEAD - 4, HEAD + RULED + 10);
        StringBuilder leaders = new StringBuilder();
        for (int i = 0; i < middles.length; i++) {
            boolean distance = labels.get(i).look() == null;
            Plot.line(leaders, stem + (distance ? 4 : 7), labels.get(i).y(), stem + LABEL - STEM - 3, middles[i]);
            svg.leafText("text", labels.get(i).lines().get(0), "class", "label", "x", stem + LABEL - STEM, "y", middles[i] + Type.SIZE * 0.35, "font-size", Type.SIZE,
                    "font-weight", distance ? "bold" : null, "fill", "#1d1d1b");
        }
        svg.leaf("path", "class", "axis", "d", leaders, "fill", "none", "stroke", "#4a4a46", "stroke-width", 0.7);
    }
}
