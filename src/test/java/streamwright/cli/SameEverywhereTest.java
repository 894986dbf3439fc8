package streamwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The program in countries that write figures, small letters and days otherwise, in a virtual machine each, since the
 * order of some collections differs only from one to the next: every byte that it writes is the same.
 */
class SameEverywhereTest {
    private static final String TEMPORARY = "-Djava.io.tmpdir=" + System.getProperty("java.io.tmpdir");

    /** Decimal points, the dotless i, digits of their own; days that begin eleven hours before and fourteen after. */
    private static final List<List<String>> COUNTRIES = List.of(
            List.of("-Duser.language=en", "-Duser.country=US", "-Duser.timezone=Pacific/Pago_Pago"),
            List.of("-Duser.language=tr", "-Duser.country=TR", "-Duser.timezone=Europe/Berlin"),
            List.of(
                    "-Duser.language=ar",
                    "-Duser.country=EG",
                    "-Duser.extensions=u-nu-arab",
                    "-Dfile.encoding=US-ASCII",
                    "-Duser.timezone=Pacific/Kiritimati"));

    @TempDir
    private Path folder;

    private List<Path> homes;

    @BeforeEach
    void aHomeInEachCountry() throws IOException {
        String lane = Files.readString(ShortLane.YARD);
        homes = new ArrayList<>();
        for (int i = 0; i < COUNTRIES.size(); i++) {
            Path home = Files.createDirectory(folder.resolve("home" + i));
            homes.add(home);
            Files.writeString(home.resolve("lane.yaml"), lane);
            // the lantern is out of reach, and has grown
            Files.writeString(
                    home.resolve("next.yaml"), lane.replace("pixels: 40", "pixels: 60") + "rules: {leadData: 3.2}\n");
            Files.writeString(
                    home.resolve("broken.yaml"), lane.replace("quad", "qaud").replace("pixels: 40", "copyOf: i"));
            ShortLane.planIn(home);
            for (String name : List.of("yard.yaml", "plan.json")) {
                Files.copy(Path.of("demo/festival", name), home.resolve("festival-" + name));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "plan lane.yaml --effort 1 -o made.json --report made.html",
                "check next.yaml plan.json --json",
                "check broken.yaml plan.json",
                "explain festival-yard.yaml festival-plan.json --json",
                "explain next.yaml festival-plan.json --from plan.json --json",
                "sheets festival-yard.yaml festival-plan.json -d sheets",
                "compare lane.yaml --boards 2..3 --time 120 --report what-if.html",
                "rebalance next.yaml --from plan.json -o next.json --time 60",
                "locate festival-yard.yaml festival-plan.json --channel 7",
                "limits --pixel ws2811",
                "models",
                "schema yard",
            })
    void everyByteIsTheSame(String command) throws Exception {
        List<Process> processes = new ArrayList<>();
        for (int i = 0; i < homes.size(); i++) {
            processes.add(started(command, COUNTRIES.get(i), homes.get(i)));
        }
        for (Process process : processes) {
            assertThat(process.waitFor(240, TimeUnit.SECONDS)).isTrue();
        }
        Map<String, String> first = written(homes.get(0));
        assertThat(first.get("out") + first.get("err")).isNotBlank().doesNotContain("\tat ");
        for (Path home : homes) {
            Map<String, String> other = written(home);
            assertThat(other.keySet()).isEqualTo(first.keySet());
            first.forEach((name, bytes) -> assertThat(other.get(name)).as(name).isEqualTo(bytes));
        }
    }

    private static Process started(String command, List<String> country, Path home) throws IOException {
        List<String> words = new ArrayList<>();
        words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        words.addAll(country);
        words.addAll(List.of("-XX:TieredStopAtLevel=1", TEMPORARY, "-cp", classPath(), Main.class.getName()));
        words.addAll(List.of(command.split(" ", -1)));
        return new ProcessBuilder(words)
                .directory(home.toFile())
                .redirectOutput(home.resolve("out").toFile())
                .redirectError(home.resolve("err").toFile())
                .start();
    }

    private static String classPath() {
        return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator, -1))
                .map(part -> Path.of(part).toAbsolutePath().toString())
                .collect(Collectors.joining(File.pathSeparator));
    }

    /** What each file holds, a character a byte; but for the time that a repair took. */
    private static Map<String, String> written(Path home) throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> paths = Files.walk(home)) {
            for (Path path : paths.filter(Files::isRegularFile).toList()) {
                String text = Files.readString(path, StandardCharsets.ISO_8859_1);
                boolean timed = path.endsWith("next.json");
                files.put(home.relativize(path).toString(), timed ? text.replaceAll("\"seconds\": [^,]*,", "") : text);
            }
        }
        return files;
    }
}
