package streamwright.report.locate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import streamwright.physics.Channels;
import streamwright.plan.Outputs;
import streamwright.plan.PanelUse;
import streamwright.plan.StreamUse;
import streamwright.report.walk.BoardStop;
import streamwright.report.walk.CableWalk;
import streamwright.report.walk.PortStop;
import streamwright.report.walk.StringStop;
import streamwright.report.walk.Walk;
import streamwright.yard.Controller;
import streamwright.yard.PixelKind;

/** Finds pixels of streams by any of their addresses. */
public final class Locator {
    private final Walk walk;
    private final Map<String, PixelKind> kinds = new HashMap<>();

    public Locator(Walk walk) {
        this.walk = walk;
        walk.yard().streamKinds().forEach(kind -> kinds.put(kind.name(), kind));
    }

    /** All pixels on that channel; with kept channels several streams may carry one. A null controller means any. */
    public List<Spot> channel(@Nullable String controller, long channel) {
        List<Spot> spots = new ArrayList<>();
        for (CableWalk cable : walk.cables()) {
            if (controller != null && !controller.equals(cable.cable().controller())) {
                continue;
            }
            for (StreamUse stream : cable.cable().streams()) {
                long offset = channel - stream.startChannel();
                PixelKind kind = kind(stream);
                if (offset >= 0 && offset < (long) stream.pixels() * kind.channels()) {
                    spots.add(spot(cable, stream, (int) (offset / kind.channels()) + 1));
                }
            }
        }
        return spots;
    }

    /** All pixels at that universe's slot, 1-based. */
    public List<Spot> slot(@Nullable String controller, int universe, int slot) {
        List<Spot> spots = new ArrayList<>();
        for (Controller each : walk.yard().controllers()) {
            boolean asked = controller == null || controller.equals(each.id());
            if (asked && slot >= 1 && slot <= each.model().universeSlots() && universe >= each.firstUniverse()) {
                spots.addAll(channel(each.id(), Channels.channel(each, universe, slot)));
            }
        }
        return spots;
    }

    /** A pixel of a string, 1-based; empty where the plan does not carry the string or the string has fewer. */
    public List<Spot> string(String prop, int string, int pixel) {
        List<Spot> spots = new ArrayList<>();
        for (StringStop stop : walk.strings()) {
            var use = stop.use();
            if (use.prop().equals(prop) && use.string() == string && pixel >= 1 && pixel <= use.pixels()) {
                spots.addAll(stream(stop.controller().id(), stop.jack(), stop.stream(), use.firstPixel() + pixel - 1));
            }
        }
        return spots;
    }

    /** What a port passes on as its n-th pixel, null pixels included; a port passes on all to the end of the stream. */
    public List<Spot> port(String board, int port, int pixel) {
        List<Spot> spots = new ArrayList<>();
        for (BoardStop stop : walk.boards()) {
            for (PortStop each : stop.ports()) {
                if (stop.id().equals(board) && each.use().port() == port && pixel >= 1) {
                    int position = each.use().startPixel() + pixel - 1;
                    spots.addAll(stream(stop.controller().id(), stop.board().jack(), each.use().stream(), position));
                }
            }
        }
        return spots;
    }

    /** A mains output of a prop, numbered from 1: the pixel whose channels switch it. */
    public List<Spot> output(String prop, int number) {
        List<Spot> spots = new ArrayList<>();
        for (BoardStop stop : walk.boards()) {
            Outputs outputs = stop.board().outputs();
            if (outputs == null) {
                continue;
            }
            for (Outputs.Line line : outputs.lines()) {
                if (line.prop().equals(prop) && line.number() == number) {
                    channel(stop.controller().id(), line.channel()).stream()
                            .filter(spot -> spot.jack() == stop.board().jack() && spot.stream() == outputs.stream())
                            .forEach(spots::add);
                }
            }
        }
        return spots;
    }

    /** A pixel of a prop's panel, 1-based in row order. */
    public List<Spot> panel(String prop, int pixel) {
        List<Spot> spots = new ArrayList<>();
        for (BoardStop stop : walk.boards()) {
            for (PanelUse panel : stop.board().panels()) {
                int before = 0;
                for (PanelUse.Part part : panel.prop().equals(prop) ? panel.parts() : List.<PanelUse.Part>of()) {
                    int within = pixel - before;
                    if (within >= 1 && within <= part.pixels()) {
                        int position = part.startPixel() + within - 1;
                        spots.addAll(stream(stop.controller().id(), stop.board().jack(), part.stream(), position));
                    }
                    before += part.pixels();
                }
            }
        }
        return spots;
    }

    /** A position on a stream; empty where the plan's stream is not so long. */
    public List<Spot> stream(String controller, int jack, int stream, int pixel) {
        List<Spot> spots = new ArrayList<>();
        for (CableWalk cable : walk.cables()) {
            if (cable.cable().controller().equals(controller) && cable.cable().jack() == jack) {
                cable.cable().streams().stream()
                        .filter(use -> use.stream() == stream && pixel >= 1 && pixel <= use.pixels())
                        .forEach(use -> spots.add(spot(cable, use, pixel)));
            }
        }
        return spots;
    }

    private PixelKind kind(StreamUse stream) {
        PixelKind kind = kinds.get(stream.pixel());
        if (kind == null) {
            throw new IllegalStateException("the yard has no pixel kind " + stream.pixel());
        }
        return kind;
    }

    private Spot spot(CableWalk cable, StreamUse stream, int pixel) {
        PixelKind kind = kind(stream);
        List<Shown> shown = new Showing(cable, stream.stream(), pixel, kind.channels()).all();
        return Spot.of(cable, stream.stream(), pixel, stream.startChannel(), kind, shown);
    }
}
