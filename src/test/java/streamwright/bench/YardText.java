package streamwright.bench;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import streamwright.file.ModelLibrary;
import streamwright.yard.BoardCount;
import streamwright.yard.BoardOffer;
import streamwright.yard.Controller;
import streamwright.yard.Costs;
import streamwright.yard.Obstacle;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Rules;
import streamwright.yard.Work;
import streamwright.yard.Yard;

/** A yard of pixel strings as a yard file; what the program's own library and the defaults say is not said again. */
final class YardText {
    private YardText() {}

    /** @throws IllegalArgumentException where a yard has what only its other fields or models of its own could say */
    static String of(Yard yard) {
        refuse(!yard.spots().isEmpty() || !yard.boardCount().equals(BoardCount.FREE), "spots or a number of boards");
        refuse(!yard.rules().equals(Rules.defaults(yard.units())), "rules of its own");
        refuse(!yard.costs().equals(Costs.defaults(yard.units())), "prices of its own");
        refuse(!yard.work().equals(Work.DEFAULTS) || yard.keepChannels(), "work or channels of its own");
        StringBuilder text = new StringBuilder();
        text.append("name: ").append(yard.name());
        text.append("\nunits: ").append(yard.units().symbol());
        text.append("\nframeRate: ").append(yard.frameRate());
        text.append("\nspare: ").append(yard.spare());
        text.append("\nbrightness: ").append(yard.brightness());
        text.append("\ncontrollers:\n");
        yard.controllers().forEach(controller -> text.append(text(controller)));
        text.append("boards:\n");
        yard.boards().forEach(offer -> text.append(text(offer)));
        if (!yard.obstacles().isEmpty()) {
            text.append("obstacles:\n");
            yard.obstacles().forEach(obstacle -> text.append(text(obstacle)));
        }
        text.append("props:\n");
        yard.props().forEach(prop -> text.append(text(prop)));
        return text.toString();
    }

    private static void refuse(boolean has, String what) {
        if (has) {
            throw new IllegalArgumentException("a yard with " + what + " is not written here");
        }
    }

    private static String text(Controller controller) {
        String model = controller.model().name();
        refuse(!controller.model().equals(ModelLibrary.builtIn().controllers().get(model)), model);
        return "  - {id: %s, model: %s, at: %s}\n".formatted(controller.id(), model, text(controller.at()));
    }

    private static String text(BoardOffer offer) {
        String model = offer.model().name();
        refuse(!offer.model().equals(ModelLibrary.builtIn().boards().get(model)), model);
        String most = offer.most() == Integer.MAX_VALUE ? "" : ", most: " + offer.most();
        return "  - {model: %s, have: %d, price: %s%s}\n".formatted(model, offer.have(), offer.price(), most);
    }

    private static String text(Obstacle obstacle) {
        String ring = obstacle.ring().stream().map(YardText::text).collect(Collectors.joining(", "));
        return "  - {id: %s, ring: [%s]}\n".formatted(obstacle.id(), ring);
    }

    private static String text(Prop prop) {
        String kind = Objects.requireNonNull(prop.pixel()).name();
        refuse(!prop.pixel().equals(ModelLibrary.builtIn().pixels().get(kind)), kind);
        String follow = prop.follow().name().toLowerCase(Locale.ROOT);
        return "  - {id: %s, pixel: %s, follow: %s, %s}\n".formatted(prop.id(), kind, follow, text(prop.strings()));
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
