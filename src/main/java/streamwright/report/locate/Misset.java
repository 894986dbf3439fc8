package streamwright.report.locate;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import streamwright.physics.Switches;
import streamwright.plan.StreamUse;
import streamwright.report.walk.BoardStop;
import streamwright.report.walk.CableWalk;
import streamwright.report.walk.PortStop;
import streamwright.report.walk.StringStop;
import streamwright.yard.Address;
import streamwright.yard.BoardModel;

/**
 * What would be seen at a string if its board's switches stood at another ID.
 *
 * <p>Start pixels are sent to IDs: a board with the ID of another takes the other's start pixels, port by port, and the
 * stream of those of its ports that can be set to any. An ID that nobody has gets none, so its ports stay dark.
 */
final class Misset {
    private final CableWalk cable;
    private final BoardStop board;
    private final PortStop port;
    private final StringStop string;
    private final int pixel;

    private Misset(CableWalk cable, BoardStop board, PortStop port, StringStop string, int pixel) {
        this.cable = cable;
        this.board = board;
        this.port = port;
        this.string = string;
        this.pixel = pixel;
    }

    /** One symptom for each ID of the same cable, in cable order, and one for all IDs that no board has. */
    static List<Symptom> symptoms(CableWalk cable, BoardStop board, PortStop port, StringStop string, int pixel) {
        return new Misset(cable, board, port, string, pixel).symptoms();
    }

    private List<Symptom> symptoms() {
        Address address = board.model().address();
        if (address instanceof Address.None) {
            return List.of();
        }
        List<Symptom> symptoms = new ArrayList<>();
        List<Integer> free = settable(address);
        for (BoardStop other : cable.boards()) {
            Integer id = other.board().boardId();
            if (id != null && free.remove(id) && !other.id().equals(board.id())) {
                symptoms.add(as(other, id, Switches.text(address, id)));
            }
        }
        if (!free.isEmpty()) {
            String text = string.label()
                    + " is dark: no board of this cable has such an ID, so nobody tells it where to start.";
            symptoms.add(new Symptom(free, null, Symptom.DARK, null, text));
        }
        return symptoms;
    }

    private static List<Integer> settable(Address address) {
        int least = address instanceof Address.Switches binary ? binary.least() : ((Address.Rotary) address).least();
        int most = address instanceof Address.Switches binary ? binary.most() : ((Address.Rotary) address).most();
        List<Integer> ids = new ArrayList<>();
        for (int id = least; id <= most; id++) {
            ids.add(id);
        }
        return ids;
    }

    private Symptom as(BoardStop other, int id, String switches) {
        PortStop taken = other.ports().stream()
                .filter(each -> each.use().port() == port.use().port())
                .findFirst()
                .orElse(null);
        if (taken == null) {
            return symptom(
                    id,
                    switches,
                    Symptom.DARK,
                    null,
                    other.id() + " has nothing on port " + port.use().port());
        }
        int own = port.use().stream();
        int stream = hearsAny() ? taken.use().stream() : own;
        StreamUse use = cable.cable().streams().stream()
                .filter(each -> each.stream() == stream)
                .findFirst()
                .orElse(null);
        int shift = taken.use().startPixel() - port.use().startPixel();
        int first = string.use().firstPixel() + shift;
        if (use == null || first > use.pixels()) {
            return symptom(id, switches, Symptom.DARK, null, "stream " + stream + " ends before");
        }
        Integer shows = pixel + shift <= use.pixels() ? pixel + shift : null;
        if (!use.pixel().equals(string.kind().name())) {
            return symptom(
                    id,
                    switches,
                    Symptom.COLOURS,
                    shows,
                    "wrong colours: stream " + stream + " is made for " + use.pixel());
        }
        if (stream == own && shift == 0) {
            return symptom(id, switches, Symptom.SAME, shows, "as planned: both ports start at the same pixel");
        }
        return picture(id, switches, stream, first, first + string.use().pixels() - 1, use, shows);
    }

    /** Which strings' pixels the window shows. */
    private Symptom picture(
            int id, String switches, int stream, int first, int last, StreamUse use, @Nullable Integer shows) {
        String end = last > use.pixels() ? "; its last " + (last - use.pixels()) + " pixels are dark" : "";
        StringStop begun = null;
        for (StringStop each : strings(stream)) {
            if (each.use().firstPixel() == first) {
                return symptom(
                        id,
                        switches,
                        Symptom.TWICE,
                        shows,
                        "the picture of " + each.label() + " on " + each.at() + ", which shows it too"
                                + (each.lastPixel() < last && last <= use.pixels()
                                        ? ", and then what follows on the stream"
                                        : "")
                                + end);
            }
            if (each.use().firstPixel() < first && first <= each.lastPixel()) {
                begun = each;
            }
        }
        String from = begun == null
                ? "what lies at pixel " + first + " of stream " + stream
                : "the picture of " + begun.label() + " on " + begun.at() + " from its pixel "
                        + (first - begun.use().firstPixel() + 1) + " on";
        return symptom(id, switches, Symptom.SHIFTED, shows, from + end);
    }

    private List<StringStop> strings(int stream) {
        return cable.boards().stream()
                .flatMap(each -> each.ports().stream())
                .flatMap(each -> each.strings().stream())
                .filter(each -> each.stream() == stream && !each.equals(string))
                .toList();
    }

    private boolean hearsAny() {
        var ports = board.model().ports();
        int index = port.use().port() - 1;
        return index < ports.size() && ports.get(index) == BoardModel.ANY;
    }

    private Symptom symptom(int id, String switches, String sees, @Nullable Integer shows, String what) {
        String verb = sees.equals(Symptom.DARK) ? " is dark: " : " shows ";
        return new Symptom(List.of(id), switches, sees, shows, string.label() + verb + what + ".");
    }
}
