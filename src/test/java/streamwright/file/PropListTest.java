package streamwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import streamwright.yard.Follow;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Yard;

class PropListTest {
    @TempDir
    Path folder;

    @Test
    void aloneItIsAYard() throws IOException {
        Yard yard = Reading.yard(folder, "props.csv", Mistakes.resource("props.csv"));
        assertThat(yard.name()).isEqualTo("props");
        assertThat(yard.controllers()).hasSize(1).allSatisfy(controller -> {
            assertThat(controller.model().name()).isEqualTo("source-4");
            assertThat(controller.at()).isEqualTo(new Point(0, 0));
        });
        assertThat(yard.frameRate()).isEqualTo(40);
        Prop gable = yard.props().get(0);
        assertThat(gable.strings())
                .containsExactly(new PixelString("gable", 1, 120, new Point(10, 8, 5.5), new Point(13, 8, 5.5)));
        Prop oak = yard.props().get(1);
        assertThat(oak.pixel()).isNotNull().extracting("name").isEqualTo("ws2811");
        assertThat(oak.follow()).isEqualTo(Follow.PROP);
        assertThat(oak.strings()).hasSize(16).allSatisfy(string -> {
            assertThat(string.feed()).isEqualTo(new Point(22, 3));
            assertThat(string.tail()).isEqualTo(new Point(22, 3, 4));
        });
        Prop copy = yard.props().get(3);
        assertThat(copy.copyOf()).isEqualTo("fence");
        assertThat(copy.pixel()).isNotNull().extracting("name").isEqualTo("ws2812b");
    }

    @Test
    void itsControllerStandsWhereItIsAsked() throws IOException {
        Path file = Files.writeString(folder.resolve("props.csv"), Mistakes.resource("props.csv"));
        Yard yard = Reading.value(YardFile.read(file, new Point(1.5, -2)));
        assertThat(yard.controllers().get(0).at()).isEqualTo(new Point(1.5, -2));
    }

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t"})
    void separatorsLineEndsAndByteOrderMarkMakeNoDifference(String separator) throws IOException {
        String plain = Mistakes.resource("props.csv");
        Yard yard = Reading.yard(folder, "props.csv", plain);
        String other = "\uFEFF" + plain.replace(",", separator).replace("\n", "\r\n") + "\r\n\r\n";
        assertThat(Reading.yard(folder, "props.csv", other)).isEqualTo(yard);
    }

    @Test
    void columnsMayComeInAnyOrderAndQuoted() throws IOException {
        String text = "y,\"x\",pixels,id\n 2 , \"1\",10,\"a b\"\n";
        assertThat(Reading.yard(folder, "props.csv", text).props())
                .singleElement()
                .satisfies(prop -> assertThat(prop.strings())
                        .containsExactly(new PixelString("a b", 1, 10, new Point(1, 2), new Point(1, 2))));
    }

    @Test
    void yardFileMayNameOneRelativeOrAbsolute() throws IOException {
        Path lists = Files.createDirectories(folder.resolve("lists"));
        Path list = Files.writeString(lists.resolve("props.csv"), Mistakes.resource("props.csv"));
        String yard = "controllers: [{id: shed, model: source-4, at: [3, 12]}]\nprops: {csv: %s}\n";
        Yard relative = Reading.yard(folder, "yard.yaml", yard.formatted("lists/props.csv"));
        assertThat(relative.props()).hasSize(4);
        assertThat(Reading.yard(folder, "yard.yaml", yard.formatted(list.toAbsolutePath())))
                .isEqualTo(relative);
    }

    @Test
    void problemsOfANamedListAreToldInIt() throws IOException {
        Files.writeString(folder.resolve("props.csv"), "id;pixels;x;y\na;5;1;1\n\nb;0;1;1\n");
        Path yard = Files.writeString(folder.resolve("yard.yaml"), "controllers: []\nprops: {csv: props.csv}\n");
        Read.Bad<Yard> bad = (Read.Bad<Yard>) YardFile.read(yard);
        assertThat(bad.problems())
                .extracting(Problem::toString)
                .containsExactly(
                        folder
                                + "/yard.yaml:1:14: controllers: found an empty list; must be a list of one or more controllers",
                        folder + "/props.csv:4:3: props[1].pixels: found 0; must be a whole number from 1 to 1000000");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "id,pixels,x,y\na,ten,1,2\n\"b,5,1,2\nc,0,1,2\n",
                "id,pixels,x,y\na,ten,1,2\n\"b,5,1,2\nc,0,\"1\",2\n"
            })
    void aQuoteThatDoesNotEndHidesNothingBehindIt(String text) throws IOException {
        assertThat(problems(text))
                .hasSize(3)
                .contains(
                        "props.csv:2:3: props[0].pixels: found ten; must be a whole number from 1 to 1000000",
                        "props.csv:4:3: props[2].pixels: found 0; must be a whole number from 1 to 1000000")
                .anyMatch(problem -> problem.startsWith("props.csv:3:1: found ") && problem.contains("quote"));
    }

    @Test
    void aMissingColumnHidesNothingInTheOthers() throws IOException {
        assertThat(problems("id,pixels,x\na,ten,1\na,5,here\n"))
                .containsExactly(
                        "props.csv:1:1: found no column y; must have one",
                        "props.csv:2:3: props[0].pixels: found ten; must be a whole number from 1 to 1000000",
                        "props.csv:3:1: props[1].id: found \"a\" a second time; must differ from that on line 2",
                        "props.csv:3:5: props[1].x: found here; must be a number from -1000000 to 1000000");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void problemsStandOnTheLinesThatAnEditorShows(String end) throws IOException {
        assertThat(problems("id,pixels,x,y\na,5,1,1\n\nb,0,1,1\n".replace("\n", end)))
                .containsExactly("props.csv:4:3: props[1].pixels: found 0; must be a whole number from 1 to 1000000");
        // a cell of two lines: what follows it stands on the second
        assertThat(problems("id,pixels,x,y\n\"a\nb\",0,1,1\n"))
                .hasSize(2)
                .anyMatch(problem -> problem.startsWith("props.csv:2:1: props[0].id: found "))
                .contains("props.csv:3:4: props[0].pixels: found 0; must be a whole number from 1 to 1000000");
    }

    @Test
    void aDoubledQuoteIsOneOfTheCell() throws IOException {
        assertThat(problems("id,pixels,x,y\n\"a \"\"b\"\"\",5,1,1\n"))
                .singleElement()
                .asString()
                .startsWith("props.csv:2:1: props[0].id: found a \"b\"; must be an id");
    }

    private List<String> problems(String text) throws IOException {
        Path file = Files.writeString(folder.resolve("props.csv"), text);
        return ((Read.Bad<Yard>) YardFile.read(file))
                .problems().stream()
                        .map(problem ->
                                problem.toString().substring(folder.toString().length() + 1))
                        .toList();
    }

    @Test
    void missingListIsAProblem() throws IOException {
        Path yard = Files.writeString(
                folder.resolve("yard.yaml"),
                "controllers: [{id: shed, model: source-4, at: [0, 0]}]\nprops: {csv: none.csv}\n");
        assertThat(((Read.Bad<Yard>) YardFile.read(yard)).problems())
                .extracting(Problem::toString)
                .containsExactly(folder + "/none.csv: found no such file; must be there");
    }
}
