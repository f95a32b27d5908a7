package housewright.app.paper;

import housewright.paper.Block;
import housewright.paper.PageSize;
import housewright.paper.Paper;
import housewright.paper.PaperOptions;
import housewright.paper.Sheet;
import housewright.paper.Spreadsheet;
import housewright.study.Study;
import java.util.List;

/** What each paper has at a state of the project, in the order of the binder. */
public record Inventory(List<Part> parts) {
    public Inventory {
        parts = List.copyOf(parts);
    }

    /**
     * One paper.
     *
     * @param sheets none where the project has nothing for it
     * @param tables names of its tables that can be had as CSV and workbook
     * @param labels whether it is printed on labels
     */
    public record Part(Paper paper, List<Mark> sheets, List<String> tables, boolean labels) {
        public Part {
            sheets = List.copyOf(sheets);
            tables = List.copyOf(tables);
        }
    }

    /** @param content a hash of what the sheet says, whatever it is printed on */
    public record Mark(String id, String title, String content) {}

    /** What one paper has, worked out without the others. */
    public static Part of(Study study, Paper paper) {
        // always the project's usual paper and labels: another size is no other content
        PaperOptions options = new PaperOptions(
                PageSize.of(study.project()), study.project().about().name(), "", "");
        List<Sheet> sheets = paper.sheets(study, options);
        return new Part(
                paper,
                sheets.stream()
                        .map(sheet -> new Mark(sheet.id(), sheet.title(), Hash.of(sheet)))
                        .toList(),
                Spreadsheet.of(sheets).stream().map(Spreadsheet::name).toList(),
                sheets.stream().flatMap(sheet -> sheet.blocks().stream()).anyMatch(Block.Labels.class::isInstance));
    }

    /** @throws IllegalArgumentException where there is no such paper */
    public Part get(Paper paper) {
        return parts.stream()
                .filter(part -> part.paper().equals(paper))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(paper.id()));
    }
}
