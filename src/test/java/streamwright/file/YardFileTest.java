package streamwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import streamwright.yard.BoardCount;
import streamwright.yard.BoardOffer;
import streamwright.yard.Controller;
import streamwright.yard.Costs;
import streamwright.yard.Follow;
import streamwright.yard.Panel;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Rules;
import streamwright.yard.Spot;
import streamwright.yard.Units;
import streamwright.yard.Work;
import streamwright.yard.Yard;

class YardFileTest {
    private static final String LEAST = """
            controllers: [{id: shed, model: source-4, at: [0, 0]}]
            props: [{id: gable, pixel: ws2811, pixels: 1, feed: [2, 3, 4]}]
            """;

    @TempDir
    Path folder;

    @Test
    void whatIsNotSaidIsTheContractsDefault() throws IOException {
        Yard yard = Reading.yard(folder, "mill lane.yaml", LEAST);
        assertThat(yard.name()).isEqualTo("mill lane");
        assertThat(yard.units()).isEqualTo(Units.M);
        assertThat(yard.frameRate()).isEqualTo(40);
        assertThat(yard.spare()).isEqualTo(0.10);
        assertThat(yard.brightness()).isEqualTo(1);
        assertThat(yard.keepChannels()).isFalse();
        assertThat(yard.boardCount()).isEqualTo(BoardCount.FREE);
        assertThat(yard.spots()).isEmpty();
        assertThat(yard.obstacles()).isEmpty();
        assertThat(yard.rules())
                .isEqualTo(new Rules(6.0, 3.0, 2, 60, 90, 1.10, 1.0, 0.3, 0.82, 1.31, 1.16, 0.02, 0.80));
        assertThat(yard.costs()).isEqualTo(new Costs(0.60, 1.90, 1.90, 12.00, 6.00, 1.90));
        assertThat(yard.work()).isEqualTo(new Work(1, 4, 15, 25, 20, 10));
        Controller shed = yard.controllers().get(0);
        assertThat(shed.firstChannel()).isEqualTo(1);
        assertThat(shed.firstUniverse()).isEqualTo(1);
        Prop gable = yard.props().get(0);
        assertThat(gable.follow()).isEqualTo(Follow.PROP);
        assertThat(gable.strings())
                .containsExactly(new PixelString("gable", 1, 1, new Point(2, 3, 4), new Point(2, 3, 4)));
        assertThat(yard.boards())
                .extracting(offer -> offer.model().name())
                .containsExactly("quad", "sixteen", "flex-eight");
        assertThat(yard.boards()).allSatisfy(offer -> {
            assertThat(offer.most()).isEqualTo(Integer.MAX_VALUE);
            assertThat(offer.have()).isZero();
            assertThat(offer.price()).isEqualTo(offer.model().price());
        });
    }

    /** One foot is 0.3048 m exactly (international yard and pound agreement, 1959). */
    @Test
    void defaultsAreConvertedForFeet() throws IOException {
        Yard yard = Reading.yard(folder, "yard.yaml", "units: ft\nrules: {hopMost: 100}\ncosts: {lead: 0.5}\n" + LEAST);
        assertThat(yard.rules().leadData()).isEqualTo(19.685, within(0.001));
        assertThat(yard.rules().cableMost()).isEqualTo(295.276, within(0.001));
        assertThat(yard.rules().hopMost()).isEqualTo(100);
        assertThat(yard.rules().slack()).isEqualTo(1.10);
        assertThat(yard.rules().connector()).isEqualTo(0.02);
        assertThat(yard.costs().trunk()).isEqualTo(0.18288, within(1e-9));
        assertThat(yard.costs().lead()).isEqualTo(0.5);
        assertThat(yard.costs().cable()).isEqualTo(12.00);
    }

    @Test
    void everythingSaidIsRead() throws IOException {
        Yard yard = Reading.yard(folder, "yard.yaml", Mistakes.resource("yard.yaml"));
        assertThat(yard.name()).isEqualTo("Mill Yard");
        BoardOffer quad = yard.boards().get(0);
        assertThat(List.of(quad.most(), quad.have(), quad.price())).isEqualTo(List.of(20, 12, 27.5));
        assertThat(yard.boardCount()).isEqualTo(new BoardCount(0, 40));
        assertThat(yard.spots()).containsExactly(new Spot("porch", new Point(10, 6), 2, 15, 25));
        assertThat(yard.obstacles().get(0).ring())
                .containsExactly(new Point(5, 5), new Point(8, 5), new Point(8, 9), new Point(5, 9));
        assertThat(yard.rules().leadData()).isEqualTo(6);
        assertThat(yard.work().hop()).isEqualTo(25);
        assertThat(yard.strings()).hasSize(1 + 16 + 1 + 1);
        Prop oak = yard.props().get(1);
        assertThat(oak.strings())
                .extracting(PixelString::number)
                .startsWith(1, 2, 3)
                .endsWith(16);
        assertThat(oak.strings()).extracting(PixelString::tail).containsOnly(new Point(22, 3, 4));
        Prop copy = yard.props().get(3);
        assertThat(copy.copyOf()).isEqualTo("fence");
        assertThat(copy.pixel()).isEqualTo(yard.props().get(2).pixel());
        assertThat(yard.props().get(4).outputs()).isEqualTo(6);
        assertThat(yard.props().get(5).panel()).isEqualTo(new Panel(64, 32));
    }

    @Test
    void copyKeepsItsOriginalsChannelAndController() throws IOException {
        Yard yard = Reading.yard(folder, "keep.yaml", Mistakes.resource("keep.yaml"));
        Prop copy = yard.props().get(2);
        assertThat(yard.keepChannels()).isTrue();
        assertThat(copy.channel()).isEqualTo(OptionalInt.of(131));
        assertThat(copy.controller()).isEqualTo("east");
    }

    @Test
    void jsonIsReadWhereYamlIs() throws IOException {
        String json = Mistakes.resource("yard.json");
        Yard yard = Reading.yard(folder, "yard.json", json);
        assertThat(Reading.yard(folder, "yard.yaml", json.replace("  ", "\t"))).isEqualTo(yard);
        assertThat(Reading.yard(folder, "yard", json)).isEqualTo(yard);
        assertThat(Reading.yard(folder, "bom.json", "\uFEFF" + json)).isEqualTo(yard);
    }

    @Test
    void firstPointOfARingMayBeSaidAgain() throws IOException {
        String ring = "obstacles: [{id: pond, ring: [[0, 1], [1, 1], [1, 1], [1, 2], [0, 1]]}]\n";
        assertThat(Reading.yard(folder, "yard.yaml", LEAST + ring)
                        .obstacles()
                        .get(0)
                        .ring())
                .containsExactly(new Point(0, 1), new Point(1, 1), new Point(1, 2));
    }

    @Test
    void doubtsAreToldWithoutRefusingTheFile() throws IOException {
        String text = """
                controllers: [{id: shed, model: source-4, at: [6, 6]}]
                spots: [{id: islet, at: [6, 7]}, {id: bank, at: [5, 5]}]
                props:
                  - {id: reed, pixel: ws2811, pixels: 5, feed: [7, 7], tail: [9, 9], follow: any}
                  - {id: rush, pixel: ws2811, pixels: 5, feed: [1, 1], follow: any}
                  - {id: lily, pixel: ws2811, pixels: 5, feed: [1, 1], channel: 5}
                obstacles: [{id: pond, ring: [[5, 5], [8, 5], [8, 9], [5, 9]]}]
                """;
        assertThat(Reading.warnings(folder, "yard.yaml", text))
                .containsExactly(
                        "yard.yaml:1:14: controllers: found controller shed inside the obstacle pond; no wire can reach it",
                        "yard.yaml:2:8: spots: found spot islet inside the obstacle pond; no wire can reach it",
                        "yard.yaml:4:5: props[0]: found a feed of reed inside the obstacle pond; no wire can reach it",
                        "yard.yaml:5:5: props[1]: found no tail; the tail of rush is taken for its feed, and jumpers start there",
                        "yard.yaml:6:65: props[2].channel: found channel 5; is not used, since channels are renumbered");
    }

    @Test
    void missingFileFolderAndLargeFileAreProblems() throws IOException {
        Path large = folder.resolve("large.yaml");
        Files.write(large, new byte[Text.MOST_BYTES + 1]);
        assertThat(List.of(problem(folder.resolve("none.yaml")), problem(folder), problem(large)))
                .containsExactly(
                        folder + "/none.yaml: found no such file; must be there",
                        folder + ": found a folder; must be a file",
                        folder + "/large.yaml: found more than 64 MiB; must be a file of at most 64 MiB");
    }

    @Test
    void wrongBytesAreToldWhereTheyStand() throws IOException {
        Path file = folder.resolve("yard.yaml");
        Files.write(file, new byte[] {'n', 'a', 'm', 'e', ':', '\n', ' ', (byte) 0xC3, (byte) 0xA9, (byte) 0xFF});
        assertThat(problem(file)).isEqualTo(file + ":2:3: found the byte 0xFF; must be UTF-8 text");
        assertThat(Reading.yard(folder, "good.yaml", "name: \"\uFFFD\"\n" + LEAST)
                        .name())
                .isEqualTo("\uFFFD");
    }

    private static String problem(Path file) {
        return ((Read.Bad<Yard>) YardFile.read(file)).problems().get(0).toString();
    }
}
