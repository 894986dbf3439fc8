package streamwright.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import streamwright.yard.Yard;

/** Writes the seeded yards as yard files into the folder that {@code -Dyards=DIR} names. */
@Tag("bench")
class YardFilesBench {
    private static final long HOMES = Long.getLong("homes", 12);
    private static final long MIXED = Long.getLong("mixed", 10);

    @Test
    void write() throws IOException {
        String folder = System.getProperty("yards");
        Assumptions.assumeTrue(folder != null, "-Dyards=DIR names no folder");
        List<Yard> yards = new ArrayList<>(LongStream.rangeClosed(1, Long.getLong("homes", HOMES))
                .mapToObj(SeededYards::home)
                .toList());
        LongStream.rangeClosed(1, MIXED).mapToObj(MixedHomes::of).forEach(yards::add);
        yards.add(SeededYards.twoHouses(1));
        yards.add(SeededYards.twoHouses(2));
        yards.add(SeededYards.street(1));
        yards.add(SeededYards.field(1));
        yards.add(SeededYards.fair(1));
        for (Yard yard : yards) {
            Path file = Path.of(folder).resolve(yard.name().replace(' ', '-') + ".yaml");
            YardText.write(file, yard);
            System.out.println(file);
        }
    }
}
