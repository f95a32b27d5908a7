package housewright.bench;

import housewright.plan.Job;
import housewright.plan.Task;
import housewright.plan.Tool;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Scanner;

/**
 * Reads instances of PSPLIB (R. Kolisch, A. Sprecher, European Journal of Operational Research 96 (1997) 205-216) as jobs: its
 * resources become tools, its periods minutes, and nobody is needed.
 */
final class Psplib {
    private Psplib() {}

    /** One instance. */
    record Instance(String name, int best, Job job) {}

    /**
     * Every so many instances of a set that are there.
     *
     * @param folder holds {@code j30/j301_1.sm} and so on, and {@code j30hrs.sm}
     * @param set j30, j60 or j120
     */
    static List<Instance> read(Path folder, String set, int every) throws IOException {
        Map<String, Integer> best = best(folder.resolve(set + "hrs.sm"));
        List<Instance> all = new ArrayList<>();
        int count = 0;
        for (int parameters = 1; parameters <= 60; parameters++) {
            for (int number = 1; number <= 10; number++) {
                Path file = folder.resolve(set).resolve("%s%d_%d.sm".formatted(set, parameters, number));
                if (Files.exists(file) && count++ % every == 0) {
                    Integer makespan = best.get(parameters + "_" + number);
                    if (makespan == null) {
                        throw new IOException("No best-known value of " + file);
                    }
                    all.add(new Instance("%d_%d".formatted(parameters, number), makespan, job(file)));
                }
            }
        }
        return all;
    }

    private static Map<String, Integer> best(Path file) throws IOException {
        Map<String, Integer> best = new HashMap<>();
        for (String line : Files.readAllLines(file, StandardCharsets.ISO_8859_1)) {
            String[] words = line.strip().split("\\s+");
            if (words.length >= 3 && words[0].matches("\\d+") && words[1].matches("\\d+") && words[2].matches("\\d+")) {
                best.put(words[0] + "_" + words[1], Integer.parseInt(words[2]));
            }
        }
        return best;
    }

    /** The job of one file. */
    static Job job(Path file) throws IOException {
        List<String> lines = Files.readAllLines(file, StandardCharsets.ISO_8859_1);
        int precedence = find(lines, "PRECEDENCE RELATIONS:") + 2;
        int requests = find(lines, "REQUESTS/DURATIONS:") + 3;
        int available = find(lines, "RESOURCEAVAILABILITIES:") + 2;
        Map<Integer, List<String>> before = new HashMap<>();
        for (int at = precedence; !lines.get(at).startsWith("*"); at++) {
            int[] row = numbers(lines.get(at));
            for (int next = 3; next < row.length; next++) {
                if (row[0] > 1) {
                    before.computeIfAbsent(row[next], key -> new ArrayList<>()).add("t" + row[0]);
                }
            }
        }
        List<Task> tasks = new ArrayList<>();
        for (int at = requests; !lines.get(at).startsWith("*"); at++) {
            int[] row = numbers(lines.get(at));
            if (row[2] == 0) {
                continue; // the first and the last, which stand for the beginning and the end
            }
            Task.Draft draft = Task.draft("t" + row[0], row[2])
                    .crew(0)
                    .after(before.getOrDefault(row[0], List.of()).toArray(String[]::new));
            for (int resource = 3; resource < row.length; resource++) {
                if (row[resource] > 0) {
                    draft.tool("r" + (resource - 2), row[resource]);
                }
            }
            tasks.add(draft.done());
        }
        List<Tool> tools = new ArrayList<>();
        int[] units = numbers(lines.get(available));
        for (int resource = 1; resource <= units.length; resource++) {
            tools.add(new Tool("r" + resource, "R" + resource, units[resource - 1]));
        }
        int longest = tasks.stream().mapToInt(task -> task.length().likely()).sum();
        return new Job(
                LocalDate.of(2027, 1, 1),
                longest / Job.DAY + 1,
                1,
                List.of(),
                List.of(),
                tools,
                List.of(),
                List.of(),
                List.of(),
                tasks,
                List.of());
    }

    private static int find(List<String> lines, String title) {
        for (int at = 0; at < lines.size(); at++) {
            if (lines.get(at).startsWith(title)) {
                return at;
            }
        }
        throw new IllegalArgumentException("Not a PSPLIB file: it has no line " + title);
    }

    private static int[] numbers(String line) {
        try (Scanner words = new Scanner(line)) {
            List<Integer> found = new ArrayList<>();
            while (words.hasNextInt()) {
                found.add(words.nextInt());
            }
            return found.stream().mapToInt(Integer::intValue).toArray();
        }
    }
}
