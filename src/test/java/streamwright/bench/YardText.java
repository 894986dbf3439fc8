package streamwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import streamwright.file.ModelLibrary;
import streamwright.yard.BoardCount;
import streamwright.yard.BoardOffer;
import streamwright.yard.Controller;
import streamwright.yard.Costs;
import streamwright.yard.Obstacle;
import streamwright.yard.Panel;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Rules;
import streamwright.yard.Spot;
import streamwright.yard.Work;
import streamwright.yard.Yard;

/** A yard as a yard file; what the program's own library and the defaults say is not said again. */
final class YardText {
    /** Beside the yard files, for the models that are not the program's own. */
    private static final String OWN_MODELS = "own-models";

    private YardText() {}

    /**
     * Writes a yard file, and the models that it needs beside it.
     *
     * @throws IllegalArgumentException where a yard has what is not written here
     */
    static void write(Path file, Yard yard) throws IOException {
        Path models = file.resolveSibling(OWN_MODELS);
        Files.createDirectories(file.toAbsolutePath().getParent());
        for (Map.Entry<String, String> model : ModelText.of(yard).entrySet()) {
            Files.createDirectories(models);
            Files.writeString(models.resolve(model.getKey()), model.getValue());
        }
        Files.writeString(file, of(yard));
    }

    private static String of(Yard yard) {
        refuse(!yard.boardCount().equals(BoardCount.FREE), "a number of boards");
        refuse(!yard.costs().equals(Costs.defaults(yard.units())), "prices of its own");
        refuse(!yard.work().equals(Work.DEFAULTS), "work of its own");
        StringBuilder text = new StringBuilder();
        text.append("name: ").append(yard.name());
        text.append("\nunits: ").append(yard.units().symbol());
        text.append("\nframeRate: ").append(yard.frameRate());
        text.append("\nspare: ").append(yard.spare());
        text.append("\nbrightness: ").append(yard.brightness());
        text.append(yard.keepChannels() ? "\nchannels: keep" : "");
        text.append(ModelText.of(yard).isEmpty() ? "" : "\nmodels: " + OWN_MODELS);
        text.append("\ncontrollers:\n");
        yard.controllers().forEach(controller -> text.append(text(controller)));
        text.append("boards:\n");
        yard.boards().forEach(offer -> text.append(text(offer)));
        if (yard.spotsNamed()) {
            text.append("spots:\n");
            yard.spots().forEach(spot -> text.append(text(spot)));
        }
        if (!yard.obstacles().isEmpty()) {
            text.append("obstacles:\n");
            yard.obstacles().forEach(obstacle -> text.append(text(obstacle)));
        }
        text.append(rules(yard.rules(), Rules.defaults(yard.units())));
        text.append("props:\n");
        yard.props().forEach(prop -> text.append(text(prop)));
        return text.toString();
    }

    private static void refuse(boolean has, String what) {
        if (has) {
            throw new IllegalArgumentException("a yard with " + what + " is not written here");
        }
    }

    private static String rules(Rules rules, Rules usual) {
        Rules said = new Rules(
                usual.leadData(),
                usual.jumperData(),
                rules.nullsMost(),
                rules.hopMost(),
                rules.cableMost(),
                usual.slack(),
                usual.trunkLoop(),
                usual.leadLoop(),
                usual.leadWireMm2(),
                usual.injectionWireMm2(),
                usual.wireFactor(),
                usual.connector(),
                usual.fuseLoad());
        refuse(!said.equals(rules), "rules of its own other than nullsMost, hopMost and cableMost");
        return rules.equals(usual)
                ? ""
                : "rules: {nullsMost: %d, hopMost: %s, cableMost: %s}\n"
                        .formatted(rules.nullsMost(), rules.hopMost(), rules.cableMost());
    }

    private static String text(Controller controller) {
        return "  - {id: %s, model: %s, at: %s}\n"
                .formatted(controller.id(), controller.model().name(), text(controller.at()));
    }

    private static String text(BoardOffer offer) {
        String most = offer.most() == Integer.MAX_VALUE ? "" : ", most: " + offer.most();
        return "  - {model: %s, have: %d, price: %s%s}\n"
                .formatted(offer.model().name(), offer.have(), offer.price(), most);
    }

    private static String text(Spot spot) {
        String most = spot.most() == Integer.MAX_VALUE ? "" : ", most: " + spot.most();
        String amps = Double.isFinite(spot.ampsMost()) ? ", ampsMost: " + spot.ampsMost() : "";
        return "  - {id: %s, at: %s, price: %s%s%s}\n".formatted(spot.id(), text(spot.at()), spot.price(), most, amps);
    }

    private static String text(Obstacle obstacle) {
        String ring = obstacle.ring().stream().map(YardText::text).collect(Collectors.joining(", "));
        return "  - {id: %s, ring: [%s]}\n".formatted(obstacle.id(), ring);
    }

    private static String text(Prop prop) {
        refuse(prop.controller() != null, "channels of several controllers");
        StringBuilder text = new StringBuilder("  - {id: " + prop.id());
        if (prop.pixel() != null) {
            String kind = prop.pixel().name();
            refuse(!prop.pixel().equals(ModelLibrary.builtIn().pixels().get(kind)), kind);
            text.append(", pixel: ").append(kind);
        }
        text.append(prop.copyOf() == null ? "" : ", copyOf: " + prop.copyOf());
        prop.channel().ifPresent(channel -> text.append(", channel: ").append(channel));
        if (prop.strings().isEmpty()) {
            Panel panel = prop.panel();
            text.append(
                    panel == null
                            ? ", outputs: " + prop.outputs()
                            : ", panel: {columns: %d, rows: %d}".formatted(panel.columns(), panel.rows()));
            text.append(", at: ").append(text(Objects.requireNonNull(prop.at())));
        } else {
            text.append(", follow: ").append(prop.follow().name().toLowerCase(Locale.ROOT));
            text.append(", ").append(text(prop.strings()));
        }
        return text.append("}\n").toString();
    }

    private static String text(List<PixelString> strings) {
        PixelString first = strings.get(0);
        boolean equal = strings.stream()
                .allMatch(s -> s.equals(
                        new PixelString(first.prop(), s.number(), first.pixels(), first.feed(), first.tail())));
        if (strings.size() == 1) {
            return text(first);
        }
        return equal
                ? "strings: {count: %d, %s}".formatted(strings.size(), text(first))
                : strings.stream().map(s -> "{" + text(s) + "}").collect(Collectors.joining(", ", "strings: [", "]"));
    }

    private static String text(PixelString string) {
        return "pixels: %d, feed: %s, tail: %s".formatted(string.pixels(), text(string.feed()), text(string.tail()));
    }

    private static String text(Point point) {
        return "[%s, %s, %s]".formatted(point.x(), point.y(), point.z());
    }
}
