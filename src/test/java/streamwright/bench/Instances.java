package streamwright.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Scanner;
import java.util.StringTokenizer;
import java.util.stream.Stream;
import streamwright.yard.Point;
import streamwright.yard.Yard;

/** Open instances read from where they lie, each as a yard with the best value known. */
final class Instances {
    private Instances() {}

    record Instance(String name, double known, Yard yard) {}

    /**
     * Open vehicle routing: {@code *.vrp} in the format of the TSPLIB, depot first, and {@code known_values.tsv} with
     * columns instance, customers, vehicles, capacity, longest route, and last the best cost known.
     */
    static List<Instance> openRouting(Path folder) throws IOException {
        Map<String, String[]> known = table(folder.resolve("known_values.tsv"));
        List<Instance> instances = new ArrayList<>();
        for (Path file : files(folder, ".vrp")) {
            String name = name(file);
            String[] row = row(known, name);
            int vehicles = Integer.parseInt(row[2]);
            int capacity = Integer.parseInt(row[3]);
            List<Point> places = new ArrayList<>();
            Map<Integer, Integer> demands = new HashMap<>();
            String section = "";
            for (String line : Files.readAllLines(file)) {
                StringTokenizer words = new StringTokenizer(line);
                String first = words.hasMoreTokens() ? words.nextToken() : "";
                if (first.matches("[A-Z_]+")) {
                    section = first;
                } else if (section.equals("NODE_COORD_SECTION")) {
                    places.add(new Point(Double.parseDouble(words.nextToken()), Double.parseDouble(words.nextToken())));
                } else if (section.equals("DEMAND_SECTION")) {
                    demands.put(Integer.valueOf(first), Integer.valueOf(words.nextToken()));
                }
            }
            List<Classic.Customer> customers = new ArrayList<>();
            for (int i = 1; i < places.size(); i++) {
                int demand = demands.getOrDefault(i + 1, 0);
                customers.add(
                        new Classic.Customer(places.get(i).x(), places.get(i).y(), demand));
            }
            Yard yard = Classic.openRouting(name, places.get(0), vehicles, capacity, customers);
            instances.add(new Instance(name, Double.parseDouble(row[row.length - 1]), yard));
        }
        return instances;
    }

    /**
     * Bin packing: {@code *.txt} with the number of items, the capacity and the sizes, and {@code known_optima.tsv} with
     * columns instance and optimum.
     */
    static List<Instance> binPacking(Path folder) throws IOException {
        Map<String, String[]> known = table(folder.resolve("known_optima.tsv"));
        List<Instance> instances = new ArrayList<>();
        for (Path file : files(folder, ".txt")) {
            try (Scanner numbers = new Scanner(file, StandardCharsets.UTF_8)) {
                int items = numbers.nextInt();
                int capacity = numbers.nextInt();
                List<Integer> sizes = new ArrayList<>();
                for (int i = 0; i < items; i++) {
                    sizes.add(numbers.nextInt());
                }
                String name = name(file);
                double optimum = Double.parseDouble(row(known, name)[1]);
                instances.add(new Instance(name, optimum, Classic.binPacking(name, capacity, sizes)));
            }
        }
        return instances;
    }

    private static Map<String, String[]> table(Path file) throws IOException {
        Map<String, String[]> rows = new HashMap<>();
        for (String line : Files.readAllLines(file)) {
            String[] row = line.split("\t", -1);
            rows.put(row[0], row);
        }
        return rows;
    }

    private static String[] row(Map<String, String[]> table, String name) {
        String[] row = table.get(name);
        if (row == null) {
            throw new IllegalArgumentException(name + " has no known value");
        }
        return row;
    }

    private static List<Path> files(Path folder, String ending) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ending))
                    .sorted()
                    .toList();
        }
    }

    private static String name(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.substring(0, name.lastIndexOf('.'));
    }
}
