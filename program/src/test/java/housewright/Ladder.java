package housewright;

import static java.util.stream.Collectors.joining;

import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The ladder of packages: for each package of ours, which of ours and which outside packages it may use. What is not
 * listed is not allowed, so a new package, or a new library, is put here first.
 */
final class Ladder {

    /** What one package may use; an outside package ending in ".." stands for all below it, too. */
    private record Rung(Set<String> ours, Set<String> outside) {}

    private static final String ROOT = "housewright";

    /** Values, collections, text and dates: what any package may use. Not I/O; see {@link #reachesOut} for the rest. */
    private static final Set<String> PLAIN = Set.of(
            "java.lang",
            "java.lang.annotation",
            "java.lang.invoke",
            "java.lang.runtime",
            "java.math",
            "java.text",
            "java.time..",
            "java.util",
            "java.util.function",
            "java.util.regex",
            "java.util.stream",
            "org.jspecify.annotations");

    /** The engines: one public entry class, public records of input and result, all else within the package. */
    private static final Set<String> ENGINES = Set.of(
            "signal",
            "cable",
            "sound",
            "picture",
            "network",
            "light",
            "power",
            "room",
            "operation",
            "work",
            "order",
            "card",
            "drawing",
            "plan.list",
            "plan.check",
            "plan.report",
            "plan.cpsat",
            "plan.chance");

    /** Above the line: these may read the clock, use threads and read what is packed with the program, such as fonts. */
    private static final Set<String> ABOVE_THE_LINE = Set.of(
            "app",
            "app.packet",
            "app.paper",
            "app.plan",
            "app.table",
            "store.sqlite",
            "cli",
            "library",
            "main",
            "paper.pdf",
            "web");

    /** These may touch the file system; {@code library} reads only what is packed with the program. */
    private static final Set<String> USES_FILES = Set.of("app", "app.paper", "app.plan", "store.sqlite", "cli", "main");

    private static final Map<String, Rung> RUNGS = new LinkedHashMap<>();

    static {
        // Ground floor first: a package uses only what stands above it in this list.
        rung("unit", List.of());
        rung("model", List.of("unit"));
        rung("model.change", List.of("unit", "model"));
        rung(
                "sheet",
                List.of(),
                "java.io",
                "java.nio",
                "java.nio.charset",
                "java.util.zip",
                "javax.xml.stream",
                "org.apache.commons.compress.archivers.zip",
                "org.apache.commons.compress.utils",
                "org.dhatim.fastexcel..");
        rung(
                "file",
                List.of("unit", "model", "model.change", "sheet"),
                "java.io",
                "java.lang.reflect",
                "java.nio",
                "java.nio.charset",
                "com.fasterxml.jackson..",
                "org.snakeyaml.engine..");
        rung("finding", List.of("unit", "model", "model.change"));
        rung("signal", List.of("unit", "model", "model.change", "finding"));
        rung("cable", List.of("unit", "model", "signal"));
        rung("sound", List.of("unit", "model", "signal", "cable"), "java.util.concurrent..");
        rung("picture", List.of("unit", "model", "signal"), "java.util.concurrent..");
        rung("network", List.of("unit", "model", "signal", "cable"), "java.util.concurrent..");
        rung("light", List.of("unit", "model", "signal", "cable"));
        rung("power", List.of("unit", "model", "signal", "cable", "network"));
        rung("room", List.of("unit", "model", "signal"));
        rung("operation", List.of("unit", "model", "signal", "cable"));
        rung("plan", List.of());
        rung("plan.axis", List.of("plan"));
        rung("plan.list", List.of("plan", "plan.axis"));
        rung("plan.check", List.of("plan"));
        rung("plan.report", List.of("plan", "plan.axis", "plan.list"));
        rung("plan.chance", List.of("plan", "plan.axis"));
        rung("plan.cpsat", List.of("plan", "plan.axis"), "com.google.ortools..");
        rung("work", List.of("unit", "model", "signal", "cable"));
        rung("order", List.of("unit", "model", "cable"));
        List<String> reckoned =
                List.of("signal", "cable", "sound", "picture", "network", "light", "power", "room", "operation");
        List<String> checked = new ArrayList<>(List.of("unit", "model", "finding"));
        checked.addAll(reckoned);
        rung("check", checked);
        List<String> used = new ArrayList<>(checked);
        used.addAll(List.of("model.change", "check"));
        List<String> studied = new ArrayList<>(used);
        for (String trade : List.of(
                "signal",
                "joining",
                "cable",
                "sound",
                "picture",
                "network",
                "light",
                "power",
                "people",
                "complete",
                "volunteers")) {
            rung("check." + trade, used);
            studied.add("check." + trade);
        }
        studied.addAll(List.of("work", "order", "plan"));
        rung("study", studied, "java.util.concurrent..");
        rung(
                "drawing",
                List.of("unit", "model", "finding", "signal", "cable", "study"),
                "java.io",
                "java.util.concurrent..",
                "javax.xml.stream",
                "org.eclipse.elk..",
                "org.eclipse.emf..");
        rung("card", List.of("unit", "model", "signal", "cable", "sound", "network", "power", "operation", "study"));
        rung(
                "paper",
                List.of(
                        "unit",
                        "model",
                        "finding",
                        "signal",
                        "cable",
                        "sound",
                        "picture",
                        "network",
                        "light",
                        "power",
                        "room",
                        "operation",
                        "plan",
                        "work",
                        "order",
                        "study",
                        "drawing",
                        "card"),
                "com.google.zxing..");
        rung("paper.html", List.of("paper"));
        rung(
                "paper.pdf",
                List.of("paper", "paper.html"),
                "java.io",
                "javax.xml.stream",
                "com.openhtmltopdf..",
                "org.apache.pdfbox..");
        rung("paper.csv", List.of("paper"));
        rung("paper.xlsx", List.of("paper", "sheet"), "java.io", "org.dhatim.fastexcel");
        rung("library", List.of("unit", "model", "file"), "java.io", "java.nio.charset", "java.util.concurrent..");
        rung(
                "app",
                List.of(
                        "sheet",
                        "unit",
                        "model",
                        "model.change",
                        "file",
                        "finding",
                        "signal",
                        "work",
                        "order",
                        "study",
                        "library"),
                "java.io",
                "java.nio.charset",
                "java.nio.file..",
                "java.util.concurrent..",
                "com.github.difflib..");
        rung(
                "app.plan",
                List.of(
                        "model",
                        "model.change",
                        "plan",
                        "plan.axis",
                        "plan.list",
                        "plan.check",
                        "plan.report",
                        "plan.chance",
                        "plan.cpsat",
                        "study"),
                "java.io",
                "java.nio.charset",
                "java.nio.file..",
                "java.util.concurrent..",
                "biweekly..",
                "com.fasterxml.jackson..");
        rung(
                "app.paper",
                List.of("model", "file", "study", "paper", "paper.html", "paper.pdf", "paper.csv", "paper.xlsx"),
                "java.io",
                "java.nio.charset",
                "java.nio.file..",
                "java.security",
                "java.util.concurrent..",
                "java.util.zip",
                "com.fasterxml.jackson..");
        rung(
                "store.sqlite",
                List.of("app"),
                "java.io",
                "java.net",
                "java.nio.channels",
                "java.nio.charset",
                "java.nio.file..",
                "java.security",
                "java.sql",
                "java.util.concurrent..",
                "org.flywaydb.core..",
                "org.jdbi.v3.core..",
                "org.sqlite..");
        rung(
                "app.table",
                List.of(
                        "sheet",
                        "unit",
                        "model",
                        "model.change",
                        "file",
                        "finding",
                        "signal",
                        "cable",
                        "study",
                        "library",
                        "app"));
        rung(
                "app.packet",
                List.of("model", "model.change", "file", "finding", "cable", "study", "app"),
                "java.io",
                "java.nio.charset",
                "java.security",
                "com.fasterxml.jackson..");
        rung(
                "cli",
                List.of(
                        "sheet",
                        "unit",
                        "model",
                        "model.change",
                        "file",
                        "finding",
                        "signal",
                        "work",
                        "order",
                        "plan",
                        "plan.chance",
                        "plan.report",
                        "study",
                        "drawing",
                        "paper",
                        "app",
                        "app.packet",
                        "app.paper",
                        "app.plan",
                        "app.table"),
                "java.io",
                "java.lang.reflect",
                "java.net",
                "java.nio.charset",
                "java.nio.file..",
                "java.security",
                "java.util.concurrent..",
                "com.fasterxml.jackson..",
                "picocli");
        rung(
                "web.page",
                List.of(
                        "sheet",
                        "unit",
                        "model",
                        "model.change",
                        "file",
                        "finding",
                        "signal",
                        "power",
                        "work",
                        "order",
                        "plan",
                        "plan.chance",
                        "plan.check",
                        "study",
                        "drawing",
                        "paper",
                        "app",
                        "app.packet",
                        "app.paper",
                        "app.plan",
                        "app.table"),
                "java.net",
                "java.nio.charset");
        rung("web.view", List.of("app.table", "web.page"), "gg.jte..");
        rung(
                "web",
                List.of(
                        "sheet",
                        "unit",
                        "model",
                        "model.change",
                        "file",
                        "finding",
                        "signal",
                        "work",
                        "order",
                        "plan",
                        "plan.chance",
                        "plan.report",
                        "study",
                        "drawing",
                        "paper",
                        "library",
                        "app",
                        "app.packet",
                        "app.paper",
                        "app.plan",
                        "app.table",
                        "web.page",
                        "web.view"),
                "java.io",
                "java.net",
                "java.nio",
                "java.nio.charset",
                "java.nio.file..",
                "java.security",
                "java.util.concurrent..",
                "java.util.zip",
                "com.google.zxing..",
                "gg.jte..",
                "io.javalin..",
                "jakarta.servlet..",
                "kotlin..",
                "org.eclipse.jetty..");
        rung(
                "main",
                List.of("model", "file", "library", "app", "store.sqlite", "cli", "web"),
                "java.io",
                "java.nio.charset",
                "java.nio.file..",
                "java.util.concurrent..",
                "picocli");
    }

    private Ladder() {}

    private static void rung(String name, List<String> ours, String... outside) {
        for (String used : ours) {
            if (!RUNGS.containsKey(used)) {
                throw new IllegalArgumentException(name + " uses " + used + ", which does not stand below it");
            }
        }
        Stream<String> all = Stream.concat(PLAIN.stream(), Stream.of(outside));
        RUNGS.put(name, new Rung(Set.copyOf(ours), Set.copyOf(all.toList())));
    }

    /** Every place where the classes break the ladder, each in a line that says what to do; empty when none does. */
    static List<String> broken(JavaClasses classes) {
        List<String> broken = new ArrayList<>();
        Map<String, List<JavaClass>> packages = new TreeMap<>();
        for (JavaClass each : classes) {
            packages.computeIfAbsent(each.getPackageName(), name -> new ArrayList<>())
                    .add(each);
        }
        packages.forEach((name, members) -> {
            String ours = name.equals(ROOT) ? "" : name.substring(ROOT.length() + 1);
            Rung rung = RUNGS.get(ours);
            if (rung == null) {
                broken.add("%s: a new package must be put on the ladder, in Ladder.java".formatted(name));
                return;
            }
            for (JavaClass each : members) {
                wrongUses(ours, rung, each, broken);
                if (!ABOVE_THE_LINE.contains(ours)) {
                    outsideWorld(each, broken);
                }
            }
            if (ENGINES.contains(ours)) {
                entryClass(name, members, broken);
            }
        });
        return broken.stream().distinct().sorted().toList();
    }

    private static void wrongUses(String ours, Rung rung, JavaClass from, List<String> broken) {
        for (Dependency dependency : from.getDirectDependenciesFromSelf()) {
            JavaClass to = dependency.getTargetClass().getBaseComponentType();
            String target = to.getPackageName();
            if (to.isPrimitive() || target.equals(from.getPackageName())) {
                continue;
            }
            boolean allowed = target.startsWith(ROOT + ".")
                    ? rung.ours().contains(target.substring(ROOT.length() + 1))
                    : rung.outside().stream().anyMatch(pattern -> matches(pattern, target));
            if (!allowed) {
                broken.add("%s uses %s: the ladder does not let %s use %s"
                        .formatted(from.getName(), to.getName(), ours, target));
            } else if (isFileAccess(to) && !USES_FILES.contains(ours)) {
                broken.add("%s uses %s: only %s may touch files"
                        .formatted(from.getName(), to.getName(), String.join(", ", sorted(USES_FILES))));
            }
        }
    }

    private static boolean matches(String pattern, String name) {
        if (!pattern.endsWith("..")) {
            return name.equals(pattern);
        }
        String stem = pattern.substring(0, pattern.length() - 2);
        return name.equals(stem) || name.startsWith(stem + ".");
    }

    private static boolean isFileAccess(JavaClass used) {
        return used.getPackageName().equals("java.io")
                && (used.getSimpleName().startsWith("File")
                        || used.getSimpleName().equals("RandomAccessFile"));
    }

    private static void outsideWorld(JavaClass from, List<String> broken) {
        for (JavaAccess<?> access : from.getAccessesFromSelf()) {
            String owner = access.getTargetOwner().getName();
            List<String> parameters = access.getTarget() instanceof CodeUnitAccessTarget called
                    ? called.getRawParameterTypes().stream()
                            .map(JavaClass::getName)
                            .toList()
                    : List.of();
            if (reachesOut(owner, access.getName(), parameters)) {
                broken.add("%s uses %s.%s: no clock, chance or surroundings here; take it as an argument"
                        .formatted(from.getName(), owner, access.getName()));
            }
        }
    }

    /** Clock, chance without a seed, and what differs between machines, among what {@link #PLAIN} would allow. */
    private static boolean reachesOut(String owner, String member, List<String> parameters) {
        boolean withoutSeed = member.equals("<init>") && parameters.isEmpty();
        return switch (owner) {
            case "java.lang.System" -> !Set.of("arraycopy", "identityHashCode").contains(member);
            case "java.lang.Thread", "java.lang.Runtime", "java.lang.Process", "java.lang.ProcessBuilder" -> true;
            case "java.lang.Class", "java.lang.ClassLoader" -> member.startsWith("getResource");
            case "java.lang.Math", "java.lang.StrictMath" -> member.equals("random");
            case "java.time.Clock" -> true;
            case "java.time.ZoneId", "java.util.Locale", "java.util.TimeZone" ->
                member.equals("systemDefault") || member.equals("getDefault");
            case "java.util.Random", "java.util.SplittableRandom", "java.util.Date" -> withoutSeed;
            case "java.util.Calendar" -> member.equals("getInstance");
            case "java.util.Collections" -> member.equals("shuffle") && parameters.size() == 1;
            case "java.util.Scanner" -> true;
            case "java.util.UUID" -> member.equals("randomUUID");
            case "java.util.concurrent.ThreadLocalRandom" -> true;
            default -> owner.startsWith("java.time.") && member.equals("now");
        };
    }

    private static void entryClass(String name, Collection<JavaClass> members, List<String> broken) {
        List<String> entries = members.stream()
                .filter(each -> each.getModifiers().contains(JavaModifier.PUBLIC))
                .filter(each -> !each.isNestedClass() && !each.isRecord() && !each.isEnum() && !each.isInterface())
                .map(JavaClass::getSimpleName)
                .sorted()
                .toList();
        if (entries.size() != 1) {
            broken.add("%s: an engine has one public entry class, beside records, enums and interfaces; this one has %s"
                    .formatted(
                            name, entries.isEmpty() ? "none" : entries.stream().collect(joining(", "))));
        }
    }

    private static List<String> sorted(Collection<String> names) {
        return names.stream().sorted().toList();
    }
}
