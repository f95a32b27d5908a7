package housewright.sheet;

import java.util.List;

/** What came of reading a spreadsheet. */
public sealed interface SheetReading {
    /**
     * @param sheets those that are not hidden, empty ones included
     * @param remarks what a reader should know of how it was read, as sentences
     */
    record Read(List<Sheet> sheets, List<String> remarks) implements SheetReading {
        public Read {
            sheets = List.copyOf(sheets);
            remarks = List.copyOf(remarks);
        }
    }

    /** @param why as a sentence that says what to do */
    record Refused(String why) implements SheetReading {}
}
