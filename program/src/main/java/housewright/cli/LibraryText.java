package housewright.cli;

import housewright.app.FoundType;
import java.util.List;
import java.util.Map;

/** What the library has. */
final class LibraryText {
    private static final int MOST = 40;
    private static final int ID = 28;

    private final Page page;

    LibraryText(Page page) {
        this.page = page;
    }

    Page kinds(Map<String, Integer> kinds) {
        int all = kinds.values().stream().mapToInt(Integer::intValue).sum();
        page.wrapped("The library has " + all + " types:");
        StringBuilder words = new StringBuilder();
        kinds.forEach((kind, count) -> words.append(words.isEmpty() ? "" : ", ")
                .append(kind)
                .append(' ')
                .append(count));
        page.hanging("  ", words + ".");
        page.blank();
        page.line("housewright library WORDS                finds types, such as: library mixer 16");
        page.line("housewright library ID                   prints one in full");
        page.line("housewright library ID --write FILE      writes it out as a start for one of your own");
        return page;
    }

    Page list(List<FoundType> types, boolean all) {
        int shown = all ? types.size() : Math.min(MOST, types.size());
        for (FoundType type : types.subList(0, shown)) {
            String id = type.id() + " ".repeat(Math.max(1, ID - type.id().length()));
            page.hanging(Ink.STRONG, id, type.name() + " (" + type.kind() + ")");
        }
        page.blank();
        String more = shown < types.size() ? ", the first " + shown + " shown; --all shows all" : "";
        page.line(types.size() + " types" + more + ". An id alone prints one in full.");
        return page;
    }
}
