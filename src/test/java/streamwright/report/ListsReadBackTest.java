package streamwright.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.Plan;
import streamwright.plan.PortUse;
import streamwright.plan.StreamUse;
import streamwright.plan.StringUse;
import streamwright.report.Sheets.Kind;
import streamwright.yard.Controller;
import streamwright.yard.Yard;
import tools.jackson.databind.MappingIterator;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvSchema;

/** What is written is read by other programs' readers and compared with the plan, figure by figure. */
class ListsReadBackTest {
    private static List<Map<String, String>> csv(String demo, Kind kind) {
        byte[] bytes =
                Sheets.of(Demo.yard(demo), Demo.plan(demo), EnumSet.of(kind)).get(kind.file());
        return rows(new String(bytes, UTF_8));
    }

    static List<Map<String, String>> rows(String csv) {
        try (MappingIterator<Map<String, String>> rows = new CsvMapper()
                .readerForMapOf(String.class)
                .with(CsvSchema.emptySchema().withHeader())
                .readValues(csv)) {
            return rows.readAll();
        }
    }

    static String cell(Map<String, String> row, String column) {
        return Objects.requireNonNull(row.get(column), column);
    }

    /** One row a string; the channel by the contract: start channel of the stream plus three a pixel before it. */
    @ParameterizedTest
    @ValueSource(strings = {"home", "trail"})
    void channelsAreThePlans(String demo) {
        Yard yard = Demo.yard(demo);
        Plan plan = Demo.plan(demo);
        List<Map<String, String>> rows = csv(demo, Kind.CHANNELS);
        assertThat(rows).hasSize(plan.totals().strings());
        int seen = 0;
        for (Board board : plan.boards()) {
            for (PortUse port : board.ports()) {
                for (StringUse string : port.strings()) {
                    Map<String, String> row = rows.stream()
                            .filter(each -> cell(each, "prop").equals(string.prop())
                                    && cell(each, "string").equals(Integer.toString(string.string())))
                            .findFirst()
                            .orElseThrow();
                    seen++;
                    long channel = stream(plan, board, port.stream()).startChannel() + 3L * (string.firstPixel() - 1);
                    Controller controller = yard.controllers().stream()
                            .filter(each -> each.id().equals(board.controller()))
                            .findFirst()
                            .orElseThrow();
                    long before = channel - controller.firstChannel();
                    assertThat(row)
                            .containsEntry("controller", board.controller())
                            .containsEntry("jack", Integer.toString(board.jack()))
                            .containsEntry("stream", Integer.toString(port.stream()))
                            .containsEntry("start pixel", Integer.toString(string.firstPixel()))
                            .containsEntry("pixels", Integer.toString(string.pixels()))
                            .containsEntry("start channel", Long.toString(channel))
                            .containsEntry("end channel", Long.toString(channel + 3L * string.pixels() - 1))
                            .containsEntry("universe", Long.toString(controller.firstUniverse() + before / 510))
                            .containsEntry("slot", Long.toString(1 + before % 510))
                            .containsEntry("board", board.id())
                            .containsEntry("port", Integer.toString(port.port()))
                            .containsEntry("start pixel of port", Integer.toString(port.startPixel()))
                            .containsEntry("nulls", Integer.toString(string.nulls()));
                }
            }
        }
        assertThat(seen).isEqualTo(rows.size());
    }

    private static StreamUse stream(Plan plan, Board board, int stream) {
        return plan.cables().stream()
                .filter(cable -> cable.controller().equals(board.controller()) && cable.jack() == board.jack())
                .flatMap(cable -> cable.streams().stream())
                .filter(use -> use.stream() == stream)
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"home", "trail"})
    void boardsStandInWalkingOrderWithTheirSettings(String demo) {
        Plan plan = Demo.plan(demo);
        List<Map<String, String>> rows = csv(demo, Kind.BOARDS);
        assertThat(rows.stream().map(row -> cell(row, "board")))
                .containsExactlyElementsOf(plan.cables().stream()
                        .flatMap(cable -> cable.boards().stream())
                        .toList());
        for (Map<String, String> row : rows) {
            Board board = plan.boards().stream()
                    .filter(each -> each.id().equals(cell(row, "board")))
                    .findFirst()
                    .orElseThrow();
            assertThat(row)
                    .containsEntry("ID", String.valueOf(board.boardId()))
                    .containsEntry("switches", board.switches())
                    .containsEntry("terminator", board.terminator() ? "on" : "off")
                    .containsEntry("volts", "12 V");
            // 55 mA a pixel (demo's ws2811 model), all channels full
            int pixels = board.ports().stream()
                    .flatMap(port -> port.strings().stream())
                    .mapToInt(StringUse::pixels)
                    .sum();
            assertThat(Double.parseDouble(cell(row, "amps at full white"))).isCloseTo(0.055 * pixels, within(0.001));
            assertThat(Double.parseDouble(cell(row, "amps at show"))).isCloseTo(0.0275 * pixels, within(0.001));
        }
        assertThat(cell(rows.get(0), "caution")).startsWith("CAUTION");
    }

    @ParameterizedTest
    @ValueSource(strings = {"home", "trail"})
    void pullsAreEveryRunOfThePlan(String demo) {
        Plan plan = Demo.plan(demo);
        List<Map<String, String>> rows = csv(demo, Kind.PULLS);
        assertThat(planned(rows, "trunk")).isCloseTo(plan.totals().trunk(), within(0.05));
        assertThat(planned(rows, "lead")).isCloseTo(plan.totals().lead(), within(0.05));
        assertThat(planned(rows, "jumper")).isCloseTo(plan.totals().jumper(), within(0.05));
        long hops =
                plan.cables().stream().mapToLong(cable -> cable.hops().size()).sum();
        assertThat(rows.stream().filter(row -> cell(row, "kind").equals("trunk")))
                .hasSize((int) hops);
        assertThat(rows.stream().filter(row -> List.of("lead", "jumper").contains(cell(row, "kind"))))
                .hasSize(plan.totals().strings());
        for (Map<String, String> row : rows) {
            double cut = Double.parseDouble(cell(row, "length to cut m"));
            double length = Double.parseDouble(cell(row, "planned length m"));
            // planned lengths are written to the millimetre
            assertThat(cut).isBetween(length - 0.0005, length + 0.1005);
            for (String end : List.of("label at from", "label at to")) {
                assertThat(cell(row, end).split("\n", -1)).allMatch(line -> line.length() <= 20 && !line.isEmpty());
                assertThat(cell(row, end).replace("\n", " ")).contains(cell(row, "from"), cell(row, "to"), " m");
            }
        }
    }

    private static double planned(List<Map<String, String>> rows, String kind) {
        return rows.stream()
                .filter(row -> cell(row, "kind").equals(kind))
                .mapToDouble(row -> Double.parseDouble(cell(row, "planned length m")))
                .sum();
    }

    @ParameterizedTest
    @ValueSource(strings = {"home", "trail"})
    void whatIsBoughtAddsUpToTheCost(String demo) {
        Plan plan = Demo.plan(demo);
        List<Map<String, String>> rows = csv(demo, Kind.SHOPPING);
        assertThat(rows.get(0)).containsEntry("kind", "caution");
        assertThat(cell(rows.get(0), "item")).contains("fire-sized currents", "licensed practice");
        List<Map<String, String>> priced = rows.stream()
                .filter(row -> !cell(row, "sum").isEmpty() && !cell(row, "kind").equals("sum"))
                .toList();
        double sum = priced.stream()
                .mapToDouble(row -> Double.parseDouble(cell(row, "sum")))
                .sum();
        assertThat(sum).isCloseTo(plan.cost(), within(0.0051));
        assertThat(Double.parseDouble(cell(rows.get(rows.size() - 1), "sum"))).isCloseTo(sum, within(1e-6));
        assertThat(quantity(rows, "null")).isEqualTo(plan.totals().nulls());
        assertThat(quantity(rows, "board")).isEqualTo(plan.totals().boards());
        assertThat(quantity(rows, "supply")).isEqualTo(plan.supplies().size());
        long ports =
                plan.boards().stream().mapToLong(board -> board.ports().size()).sum();
        long injections = plan.boards().stream()
                .flatMap(board -> board.ports().stream())
                .mapToLong(port -> port.injections().size())
                .sum();
        assertThat(quantity(rows, "fuse")).isEqualTo((double) (ports + injections));
    }

    private static double quantity(List<Map<String, String>> rows, String kind) {
        return rows.stream()
                .filter(row -> cell(row, "kind").equals(kind))
                .mapToDouble(row -> Double.parseDouble(cell(row, "quantity")))
                .sum();
    }

    @ParameterizedTest
    @ValueSource(strings = {"home", "trail"})
    void commissioningWalksEveryCableAndTriesEveryPort(String demo) {
        Plan plan = Demo.plan(demo);
        List<Map<String, String>> rows = csv(demo, Kind.COMMISSIONING);
        List<String> walked =
                rows.stream().map(row -> cell(row, "board")).distinct().toList();
        assertThat(walked)
                .containsExactlyElementsOf(plan.cables().stream()
                        .map(Cable::boards)
                        .flatMap(List::stream)
                        .toList());
        for (Board board : plan.boards()) {
            for (PortUse port : board.ports()) {
                StringUse first = port.strings().get(0);
                StringUse last = port.strings().get(port.strings().size() - 1);
                long end = last.channel() + 3L * last.pixels() - 1;
                assertThat(rows.stream()
                                .filter(row -> cell(row, "board").equals(board.id())
                                        && cell(row, "step").startsWith("port " + port.port() + ":"))
                                .map(row -> cell(row, "send at full")))
                        .containsExactly(
                                "channels " + first.channel() + "-" + (first.channel() + 2),
                                "channels " + (end - 2) + "-" + end);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"home", "trail"})
    void theWorkbookHoldsTheSameListsCellByCell(String demo) throws IOException {
        Map<String, byte[]> files = Sheets.of(Demo.yard(demo), Demo.plan(demo), EnumSet.allOf(Kind.class));
        List<Kind> lists = List.of(Kind.BOARDS, Kind.CHANNELS, Kind.PULLS, Kind.SHOPPING, Kind.COMMISSIONING);
        try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(files.get("plan.xlsx")))) {
            assertThat(book.getSheets().map(Sheet::getName))
                    .containsExactlyElementsOf(lists.stream().map(Kind::label).toList());
            for (Kind kind : lists) {
                Sheet sheet = book.findSheet(kind.label()).orElseThrow();
                List<Map<String, String>> csv = rows(new String(files.get(kind.file()), UTF_8));
                List<Row> rows = sheet.read();
                assertThat(rows).hasSize(csv.size() + 1);
                for (int r = 0; r < csv.size(); r++) {
                    assertThat(texts(rows.get(r + 1), csv.get(r).size()))
                            .containsExactlyElementsOf(csv.get(r).values());
                }
            }
        }
    }

    private static List<String> texts(Row row, int columns) {
        List<String> texts = new ArrayList<>();
        for (int c = 0; c < columns; c++) {
            Cell cell = row.getOptionalCell(c).orElse(null);
            texts.add(
                    cell == null || cell.getValue() == null
                            ? ""
                            : cell.getValue() instanceof java.math.BigDecimal figure
                                    ? figure.stripTrailingZeros().toPlainString()
                                    : cell.getText());
        }
        return texts;
    }
}
