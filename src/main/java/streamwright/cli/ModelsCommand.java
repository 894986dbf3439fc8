package streamwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import streamwright.file.ModelLibrary;
import streamwright.report.Cautions;

/** Lists and shows the hardware models inside the program. */
@Command(
        name = "models",
        description = "Lists the hardware models that the program knows, or shows one of them as a model file.",
        footer = {
            "  streamwright models                       all of them",
            "  streamwright models ws2811                one, as a file that can be copied and changed",
            "  streamwright models quad > models/my.yaml",
        },
        mixinStandardHelpOptions = true)
final class ModelsCommand implements Callable<Integer> {
    @Parameters(arity = "0..1", paramLabel = "NAME", description = "The model to show.")
    private @Nullable String name;

    @Option(names = "--json", description = "Prints JSON instead of tables or YAML.")
    private boolean json;

    @Mixin
    private Console console;

    @Override
    public Integer call() {
        List<Map<String, Object>> models = ModelFields.of(ModelLibrary.builtIn());
        if (name != null) {
            models = List.of(named(name, models));
        }
        if (json) {
            // a caution inside would break the list
            console.err().println(Cautions.POWER);
            console.out().println(Json.text(models));
        } else if (name != null) {
            console.out().println(commented(Cautions.POWER));
            console.out().print(ModelFields.yaml(models.get(0)));
        } else {
            console.out().println(Cautions.POWER);
            for (String sort : ModelFields.SORTS) {
                console.out().println("\n" + table(sort, models));
            }
        }
        return Exit.DONE;
    }

    private static Map<String, Object> named(String name, List<Map<String, Object>> models) {
        Map<String, Map<String, Object>> byName =
                models.stream().collect(Collectors.toMap(ModelFields::name, model -> model, (one, again) -> one));
        return Inputs.named("model", name, byName);
    }

    private static String commented(String text) {
        return text.lines().map(line -> "# " + line).collect(Collectors.joining("\n"));
    }

    private static Table table(String sort, List<Map<String, Object>> models) {
        List<Map<String, Object>> rows =
                models.stream().filter(model -> model.containsKey(sort)).toList();
        List<String> fields = rows.stream()
                .flatMap(model -> model.keySet().stream())
                .filter(field -> !field.equals("source"))
                .distinct()
                .toList();
        Table table = new Table(fields.stream()
                .map(field -> rows.stream().allMatch(model -> isFigure(model.get(field))) ? ">" + field : field)
                .toArray(String[]::new));
        for (Map<String, Object> model : rows) {
            table.row(fields.stream().map(field -> cell(model.get(field))).toArray());
        }
        return table;
    }

    /** Equal ports in a row are counted: a cell must not be wider than the rest of its table. */
    private static String cell(@Nullable Object value) {
        if (!(value instanceof List<?> list)) {
            return ModelFields.text(value);
        }
        List<String> runs = new ArrayList<>();
        for (int i = 0, next; i < list.size(); i = next) {
            next = i;
            while (next < list.size() && list.get(next).equals(list.get(i))) {
                next++;
            }
            runs.add(next - i == 1 ? String.valueOf(list.get(i)) : (next - i) + " x " + list.get(i));
        }
        return String.join(", ", runs);
    }

    private static boolean isFigure(@Nullable Object value) {
        return value == null || value instanceof Number;
    }
}
