package streamwright.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import streamwright.file.PlanFile;
import streamwright.file.Read;
import streamwright.file.YardFile;
import streamwright.layout.Assembly;
import streamwright.layout.Layout;
import streamwright.layout.Layout.Chain;
import streamwright.layout.Layout.Hung;
import streamwright.layout.Layout.Run;
import streamwright.physics.Ground;
import streamwright.plan.Plan;
import streamwright.plan.Reason;
import streamwright.plan.Reason.About;
import streamwright.plan.Reason.Because;
import streamwright.plan.Reason.Broken;
import streamwright.plan.Reason.Instead;
import streamwright.plan.Rule;
import streamwright.yard.BoardModel;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Spot;
import streamwright.yard.Yard;

/** A yard of three strings, and a plan of two boards made for it by hand. */
final class ShortLane {
    static final Path YARD = resource("lane.yaml");

    private ShortLane() {}

    static Path resource(String name) {
        try {
            return Path.of(ShortLane.class.getResource(name).toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    static Yard yard() {
        return yard(YARD);
    }

    static Yard yard(Path file) {
        return ((Read.Good<Yard>) YardFile.read(file)).value();
    }

    /** Open ground, measured as the yard file's rules say. */
    private static final Ground OPEN =
            (from, to) -> Math.hypot(to.x() - from.x(), to.y() - from.y()) + Math.abs(to.z() - from.z());

    static Plan plan() {
        return plan(yard());
    }

    static Plan plan(Yard yard) {
        return Assembly.plan(yard, OPEN, layout(yard)).withReasons(REASONS);
    }

    static Layout layout(Yard yard) {
        BoardModel quad = yard.boards().get(0).model();
        List<PixelString> strings = yard.strings();
        Hung first = new Hung(quad, Spot.unnamed(new Point(4, 0)), List.of(new Chain(1, 1, strings.subList(0, 2))));
        Hung second = new Hung(quad, Spot.unnamed(new Point(12, 3)), List.of(new Chain(2, 2, strings.subList(2, 3))));
        return new Layout(List.of(new Run(yard.controllers().get(0), 1, List.of(first, second))));
    }

    /** The same without its last board, and so without lantern. */
    static Layout unfinished(Yard yard) {
        Run run = layout(yard).cables().get(0);
        return new Layout(
                List.of(new Run(run.controller(), run.jack(), run.boards().subList(0, 1))));
    }

    private static final List<Reason> REASONS = List.of(
            new Reason(
                    About.string("gate", 2),
                    "behind gate 1",
                    List.of(Because.cost(2.3)),
                    List.of(new Instead("port 2 of B1", 1.5, null)),
                    "gate 2 follows gate 1, which costs 2.30 of wire."),
            new Reason(
                    About.board("B2"),
                    "at 12, 3",
                    List.of(Because.rule(Rule.LEAD_NULLS, 2, 2)),
                    List.of(new Instead("no board there", null, new Broken(Rule.LEAD_NULLS.label(), 4, 2))),
                    "B2 hangs at 12, 3, since the lead from B1 would need 4 null pixels."),
            new Reason(
                    About.cable("shed", 1),
                    "one cable",
                    List.of(Because.rule(Rule.FUSE, 2.2, 4)),
                    List.of(new Instead("two cables", 12.0, null)),
                    "One cable carries both boards."));

    /** The plan as a file in a folder. */
    static Path planIn(Path folder) {
        return write(plan(), folder);
    }

    static Path write(Plan plan, Path folder) {
        try {
            Path file = folder.resolve("plan.json");
            PlanFile.write(plan, file);
            return file;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The plan's file with a piece of its text changed. */
    static Path changedIn(Path folder, String from, String to) {
        try {
            Path file = planIn(folder);
            String text = Files.readString(file);
            if (!text.contains(from)) {
                throw new IllegalArgumentException("the plan does not say " + from);
            }
            return Files.writeString(file, text.replace(from, to));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
