package streamwright.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import streamwright.file.Schemas;

/** Prints the JSON Schema of a file. */
@Command(
        name = "schema",
        description = "Prints the JSON Schema of a yard, plan or model file, or of all of them in one object.",
        footer = {
            "  streamwright schema yard > yard.schema.json      for an editor that checks while one types",
            "  streamwright schema                              all of them, by name",
        },
        mixinStandardHelpOptions = true)
final class SchemaCommand implements Callable<Integer> {
    @Parameters(
            arity = "0..1",
            paramLabel = "FILE",
            description = "yard, plan, model (any of the next three), board, controller or pixel.")
    private @Nullable String file;

    @Mixin
    private Console console;

    @Override
    public Integer call() {
        console.out()
                .print(
                        file == null
                                ? all()
                                : Inputs.named("schema", file, schemas()).get());
        return Exit.DONE;
    }

    private static Map<String, Supplier<String>> schemas() {
        Map<String, Supplier<String>> schemas = new LinkedHashMap<>();
        schemas.put("yard", Schemas::yard);
        schemas.put("plan", Schemas::plan);
        schemas.put("model", Schemas::model);
        schemas.put("board", Schemas::board);
        schemas.put("controller", Schemas::controller);
        schemas.put("pixel", Schemas::pixel);
        return schemas;
    }

    private static String all() {
        return schemas().entrySet().stream()
                .map(each ->
                        '"' + each.getKey() + "\": " + each.getValue().get().strip())
                .collect(Collectors.joining(",\n", "{\n", "\n}\n"));
    }
}
