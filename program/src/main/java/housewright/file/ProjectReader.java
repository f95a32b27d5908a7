package housewright.file;

import housewright.file.Node.Entry;
import housewright.file.Node.Mapping;
import housewright.file.Node.Scalar;
import housewright.model.Library;
import housewright.model.Project;
import housewright.sheet.SheetReader;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Reads project files. */
public final class ProjectReader {
    /** The version of the format that this program reads and writes. */
    public static final int FORMAT = 1;

    private ProjectReader() {}

    /**
     * Reads a file: as a workbook where it begins as one, as JSON where its name ends in {@code .json} or it begins as a
     * JSON object does, else as YAML.
     *
     * @param fileName for errors, and for its ending
     * @param bytes at most 16 MB of UTF-8, or a workbook that {@link ProjectBook} has written
     */
    public static ReadResult read(String fileName, byte[] bytes, Library library) {
        try {
            if (SheetReader.isWorkbook(bytes)) {
                return read(fileName, ProjectBook.read(bytes), library, ProjectWriter::yaml);
            }
            return read(fileName, Documents.decode(bytes), library);
        } catch (DocumentException e) {
            return new ReadResult.Refused(List.of(e.error(fileName)));
        }
    }

    /**
     * As {@link #read(String, byte[], Library)}, and stops reading the stream where a file becomes too large. Does not
     * close it.
     *
     * @throws IOException when the stream cannot be read
     */
    public static ReadResult read(String fileName, InputStream in, Library library) throws IOException {
        return read(fileName, in.readNBytes(Documents.LARGEST_BYTES + 1), library);
    }

    static ReadResult read(String fileName, String text, Library library) throws DocumentException {
        Node root = Documents.read(fileName, text);
        if (!(root instanceof Mapping document)) {
            throw root instanceof Scalar scalar && scalar.isNothing()
                    ? Documents.empty()
                    : new DocumentException(
                            root.span().line(), root.span().column(), root.found(), Documents.BEGINNING);
        }
        return read(fileName, document, library, project -> text);
    }

    /** @param text that the project is known by from now on */
    private static ReadResult read(String fileName, Mapping document, Library library, Function<Project, String> text)
            throws DocumentException {
        refuseOtherFormat(document);
        Errors errors = new Errors();
        Budget budget = new Budget();
        Binder binder = new Binder(errors, budget);
        Project project = binder.project(document);
        new References(project, library, binder, () -> document, errors, budget).check();
        return errors.isEmpty()
                ? new ReadResult.Loaded(project, new SourceText(fileName, text.apply(project), document))
                : new ReadResult.Refused(errors.list(fileName));
    }

    /**
     * What the reader would refuse in a project that was put together otherwise: whatever names something that is not
     * there, or not of the kind it must be. The errors' paths say where.
     *
     * @param name for the errors, in place of a file's
     */
    public static List<FileError> check(String name, Project project, Library library) {
        return check(name, project, library, new Errors());
    }

    /** As above, with up to so many errors, for whoever has to tell each of many rows what is wrong with it. */
    public static List<FileError> check(String name, Project project, Library library, int mostErrors) {
        return check(name, project, library, new Errors(mostErrors, mostErrors));
    }

    private static List<FileError> check(String name, Project project, Library library, Errors errors) {
        Budget budget = new Budget();
        new References(project, library, new Binder(errors, budget), () -> ModelNodes.of(project), errors, budget)
                .check();
        return errors.isEmpty() ? List.of() : errors.list(name);
    }

    /** What another version means by its keys nobody knows here, so no other error is worth telling. */
    private static void refuseOtherFormat(Mapping document) throws DocumentException {
        for (Entry entry : document.entries()) {
            if (entry.key().text().equals("housewright") && entry.value() instanceof Scalar version) {
                Integer number = number(version.text());
                if (number == null || number != FORMAT) {
                    throw new DocumentException(
                            version.span().line(),
                            version.span().column(),
                            "format version " + Shown.cut(version.text()),
                            "version " + FORMAT
                                    + (number != null && number > FORMAT
                                            ? ": the file was made by a newer Housewright, which is needed to read it"
                                            : ", which is all there is so far"));
                }
            }
        }
    }

    private static @Nullable Integer number(String text) {
        boolean digits = !text.isEmpty() && text.length() < 10;
        for (int i = 0; digits && i < text.length(); i++) {
            digits = text.charAt(i) >= '0' && text.charAt(i) <= '9';
        }
        return digits ? Integer.valueOf(text) : null;
    }
}
