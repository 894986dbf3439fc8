package streamwright.cli;

import java.util.List;
import java.util.stream.Collectors;
import streamwright.report.Cautions;
import streamwright.report.locate.Shown;
import streamwright.report.locate.Spot;
import streamwright.report.locate.Symptom;

/** Addresses as people read them. */
final class LocateText {
    private LocateText() {}

    static String of(List<Spot> spots) {
        if (spots.isEmpty()) {
            return "No stream of this plan carries that.";
        }
        boolean mains = spots.stream()
                .flatMap(spot -> spot.shown().stream())
                .anyMatch(shown -> shown.as().equals("output"));
        String text = spots.stream().map(LocateText::of).collect(Collectors.joining("\n\n"));
        return mains ? Cautions.POWER + "\n\n" + text : text;
    }

    private static String of(Spot spot) {
        StringBuilder text = new StringBuilder()
                .append("stream    %s %d stream %d, pixel %d (%s)%n"
                        .formatted(spot.controller(), spot.jack(), spot.stream(), spot.pixel(), spot.kind()))
                .append("channels  %d-%d of %s%n".formatted(spot.channel(), spot.lastChannel(), spot.controller()))
                .append("universe  %d, slot %d".formatted(spot.universe(), spot.slot()));
        if (spot.shown().isEmpty()) {
            text.append("\nnowhere to be seen: no port's string takes this pixel");
        }
        spot.shown().forEach(shown -> text.append('\n').append(of(shown)));
        return text.toString();
    }

    private static String of(Shown shown) {
        StringBuilder text = new StringBuilder("board     %s%s, %s %d, pixel %d from its start pixel on%n"
                .formatted(
                        shown.board(),
                        shown.boardId() == null ? "" : " (ID " + shown.boardId() + ")",
                        shown.as().equals("output") || shown.as().equals("panel") ? shown.as() : "port",
                        shown.port(),
                        shown.portPixel()));
        text.append("string    ").append(what(shown));
        if (!shown.ifSetTo().isEmpty()) {
            Table table = new Table("if switches stand at", "switches", ">pixel", "to be seen", "namely");
            for (Symptom symptom : shown.ifSetTo()) {
                table.row(
                        (symptom.ids().size() == 1 ? "ID " : "IDs ") + ids(symptom.ids()),
                        symptom.switches() == null ? "" : symptom.switches(),
                        symptom.pixel() == null ? "-" : symptom.pixel(),
                        symptom.sees(),
                        symptom.text());
            }
            text.append("\n\n").append(table);
        }
        return text.toString();
    }

    private static String what(Shown shown) {
        return switch (shown.as()) {
            case "null" -> "null pixel %d in the wire to %s".formatted(shown.pixel(), shown.label());
            case "output" -> "mains output of " + shown.label();
            case "panel" -> "%s, pixel %d in row order".formatted(shown.label(), shown.pixel());
            default -> "%s, pixel %d".formatted(shown.label(), shown.pixel());
        };
    }

    /** Runs of IDs are said by their ends: {@code 0, 8-15}. */
    private static String ids(List<Integer> ids) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < ids.size(); ) {
            int last = i;
            while (last + 1 < ids.size() && ids.get(last + 1) == ids.get(last) + 1) {
                last++;
            }
            text.append(text.isEmpty() ? "" : ", ").append(ids.get(i));
            if (last > i) {
                text.append('-').append(ids.get(last));
            }
            i = last + 1;
        }
        return text.toString();
    }
}
