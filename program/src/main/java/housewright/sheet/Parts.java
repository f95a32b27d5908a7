package housewright.sheet;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Collections;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;

/**
 * Looks at every part of a workbook before anything is read of it, and hands on only what was looked at: how far it
 * unpacks, that it declares no entities, runs no macros, takes nothing from other workbooks, and that no cell says it
 * stands further out than a sheet reaches.
 */
final class Parts {
    /** What all parts may unpack to; a sheet of 20 000 rows and 20 columns takes some 20 MB. */
    static final int MOST_UNPACKED = 120 * 1024 * 1024;

    /** Of a part that is not small; filled rows of one format come to 20 or 50. */
    static final int MOST_RATIO = 250;

    private static final int SMALL = 1024 * 1024;
    private static final int MOST_PARTS = 2000;
    private static final int LAST_ROW = 1_048_576; // ISO/IEC 29500-1, 18.3.1.73: what spreadsheet programs have
    private static final int LONGEST_COLUMN = 3; // XFD is the last

    private Parts() {}

    /** The same workbook, of the parts that were looked at. */
    static byte[] check(byte[] bytes) throws Unreadable {
        ByteArrayOutputStream checked = new ByteArrayOutputStream(bytes.length + 1024);
        Set<String> names = new HashSet<>();
        long unpacked = 0;
        try (ZipFile in = Archive.open(bytes);
                ZipOutputStream out = new ZipOutputStream(checked)) {
            out.setLevel(Deflater.BEST_SPEED);
            for (ZipArchiveEntry entry : Collections.list(in.getEntries())) {
                String name = entry.getName();
                String plain = name.toLowerCase(Locale.ROOT);
                refuse(plain, entry);
                if (!names.add(plain)) {
                    throw new Unreadable("It is damaged: it has the part " + name + " twice.");
                }
                if (names.size() > MOST_PARTS) {
                    throw new Unreadable("It has more than " + MOST_PARTS + " parts; no list has so many.");
                }
                if (!plain.endsWith(".xml") && !plain.endsWith(".rels")) {
                    continue; // pictures, printer settings: nothing of theirs is read
                }
                byte[] part = unpack(in.getInputStream(entry), entry, MOST_UNPACKED - unpacked);
                unpacked += part.length;
                look(part, name);
                out.putNextEntry(new ZipEntry(name));
                out.write(part);
                out.closeEntry();
            }
        } catch (IOException | IllegalArgumentException e) {
            throw Workbook.broken();
        }
        if (!names.contains("xl/workbook.xml") || !names.contains("[content_types].xml")) {
            throw new Unreadable(
                    names.contains("mimetype")
                            ? "It is named .xlsx and is a document of another kind. Save it as .xlsx or .csv."
                            : "It is a zip archive and no workbook: the parts of a workbook are not in it.");
        }
        return checked.toByteArray();
    }

    private static void refuse(String part, ZipArchiveEntry entry) throws Unreadable {
        if (entry.getGeneralPurposeBit().usesEncryption()) {
            throw new Unreadable("It is locked with a password. Take the password away, and save it as .xlsx.");
        }
        if (part.contains("vbaproject") || part.contains("/macrosheets/")) {
            throw new Unreadable(
                    "It holds macros, which are never run here. Save it as .xlsx without them, and look at it first.");
        }
        if (part.contains("/externallinks/")) {
            throw new Unreadable("It takes values from other workbooks, which are never opened here. Save a copy with"
                    + " values in place of the links.");
        }
    }

    /** Counted while it is unpacked: what an archive says of itself is not believed. */
    private static byte[] unpack(InputStream in, ZipArchiveEntry entry, long room) throws IOException, Unreadable {
        ByteArrayOutputStream part = new ByteArrayOutputStream();
        byte[] buffer = new byte[64 * 1024];
        long packed = Math.max(1, entry.getCompressedSize());
        try (in) {
            for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
                part.write(buffer, 0, n);
                if (part.size() > room) {
                    throw new Unreadable("It unpacks to more than " + MOST_UNPACKED / 1024 / 1024
                            + " MB, which no list of a hall does. Nothing of it was read.");
                }
                if (part.size() > SMALL && part.size() / packed > MOST_RATIO) {
                    throw bomb(entry.getName());
                }
            }
        }
        return part.toByteArray();
    }

    private static Unreadable bomb(String name) {
        return new Unreadable("Its part " + name + " unpacks to more than " + MOST_RATIO
                + " times its size, as traps do. Nothing of it was read.");
    }

    private static void look(byte[] part, String name) throws Unreadable {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        try {
            XMLStreamReader xml = factory.createXMLStreamReader(new ByteArrayInputStream(part));
            String encoding = xml.getCharacterEncodingScheme();
            if (encoding != null && !encoding.equalsIgnoreCase("UTF-8")) {
                throw new Unreadable(
                        "Its part " + name + " is not in UTF-8, as a workbook is. Save it again as .xlsx.");
            }
            while (xml.hasNext()) {
                int event = xml.next();
                if (event == XMLStreamConstants.DTD || event == XMLStreamConstants.ENTITY_REFERENCE) {
                    throw new Unreadable("Its part " + name + " declares entities, as traps do and workbooks do not.");
                }
                if (event == XMLStreamConstants.START_ELEMENT) {
                    place(xml);
                }
            }
        } catch (XMLStreamException e) {
            throw Workbook.broken();
        }
    }

    private static void place(XMLStreamReader xml) throws Unreadable {
        String element = xml.getLocalName();
        String at = element.equals("c") || element.equals("row") ? xml.getAttributeValue(null, "r") : null;
        if (at == null) {
            return;
        }
        int letters = 0;
        while (letters < at.length() && at.charAt(letters) >= 'A' && at.charAt(letters) <= 'Z') {
            letters++;
        }
        String number = at.substring(letters);
        boolean fits = letters <= LONGEST_COLUMN
                && (element.equals("row") ? letters == 0 : letters > 0)
                && number.matches("[1-9]\\d{0,6}")
                && Integer.parseInt(number) <= LAST_ROW;
        if (!fits) {
            throw new Unreadable("It is damaged: a cell in it says that it stands at \""
                    + (at.length() > 20 ? at.substring(0, 20) + "…" : at) + "\", where no sheet reaches.");
        }
    }
}
