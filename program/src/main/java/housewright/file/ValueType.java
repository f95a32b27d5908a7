package housewright.file;

import housewright.model.Default;
import housewright.model.LocalRef;
import housewright.model.NamePattern;
import housewright.model.Word;
import housewright.model.Written;
import housewright.unit.Quantity;
import housewright.unit.VideoFormat;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What the file has for a component of a record. */
sealed interface ValueType {

    /**
     * One scalar.
     *
     * @param words the words of an enum in order; empty for any other
     */
    record One(Class<?> type, Notation notation, Map<String, Object> words) implements ValueType {}

    /** A list; where one scalar stands in its place, it is a list of one. */
    record Many(ValueType element) implements ValueType {}

    /** A mapping of names to values, in the file's order. */
    record Table(Keys keys, Class<?> keyType, ValueType value) implements ValueType {}

    /** A record: most often a mapping. */
    record Of(Class<?> type) implements ValueType {
        RecordForm form() {
            return RecordForm.of(type);
        }
    }

    /** How a scalar is read and written. */
    enum Notation {
        TEXT,
        WHOLE,
        DECIMAL,
        MONEY,
        YES_NO,
        ON_OFF,
        WORD,
        QUANTITY,
        PICTURE_FORMAT,
        WRITTEN,
        MOMENT,
        DATE,
        TIME,
        ZONE
    }

    /** What the keys of a table are. */
    enum Keys {
        ID,
        /** Ids of types, which may have dots: {@code speaker-2x1.5}. */
        TYPE_ID,
        /** Names or ranges of names, which must not overlap. */
        PATTERN
    }

    static ValueType of(RecordComponent component, boolean typeIds) {
        Default absent = component.getAnnotation(Default.class);
        boolean onOff = component.getName().equals("on")
                || (absent != null
                        && (absent.value().equals("on") || absent.value().equals("off")));
        Class<?> type = component.getType();
        return type == List.class || type == Map.class ? of(component.getGenericType(), typeIds) : single(type, onOff);
    }

    /** What is written for a class by itself. */
    static ValueType of(Class<?> type) {
        return single(type, false);
    }

    private static ValueType of(Type type, boolean typeIds) {
        if (type instanceof ParameterizedType generic) {
            Type[] arguments = generic.getActualTypeArguments();
            if (generic.getRawType() == List.class) {
                return new Many(of(arguments[0], false));
            }
            if (generic.getRawType() == Map.class && arguments[0] instanceof Class<?> key) {
                boolean pattern = key == NamePattern.class || key == LocalRef.class;
                if (!pattern && key != String.class) {
                    throw new IllegalStateException("No key of the file is a " + key.getName());
                }
                Keys keys = pattern ? Keys.PATTERN : typeIds ? Keys.TYPE_ID : Keys.ID;
                return new Table(keys, key, of(arguments[1], false));
            }
        }
        if (type instanceof Class<?> single) {
            return single(single, false);
        }
        throw new IllegalStateException("Nothing in the file is a " + type.getTypeName());
    }

    private static ValueType single(Class<?> type, boolean onOff) {
        Notation notation = notation(type, onOff);
        if (notation != null) {
            return new One(type, notation, notation == Notation.WORD ? words(type) : Map.of());
        }
        if (type.isRecord()) {
            return new Of(type);
        }
        throw new IllegalStateException("Nothing in the file is a " + type.getName());
    }

    private static @Nullable Notation notation(Class<?> type, boolean onOff) {
        if (type == String.class) {
            return Notation.TEXT;
        }
        if (type == int.class || type == Integer.class) {
            return Notation.WHOLE;
        }
        if (type == double.class || type == Double.class) {
            return Notation.DECIMAL;
        }
        if (type == boolean.class || type == Boolean.class) {
            return onOff ? Notation.ON_OFF : Notation.YES_NO;
        }
        if (Quantity.class.isAssignableFrom(type)) {
            return Notation.QUANTITY;
        }
        if (Written.class.isAssignableFrom(type)) {
            return Notation.WRITTEN;
        }
        if (Word.class.isAssignableFrom(type)) {
            return Notation.WORD;
        }
        if (type == BigDecimal.class) {
            return Notation.MONEY;
        }
        if (type == VideoFormat.class) {
            return Notation.PICTURE_FORMAT;
        }
        if (type == LocalDateTime.class) {
            return Notation.MOMENT;
        }
        if (type == LocalDate.class) {
            return Notation.DATE;
        }
        if (type == LocalTime.class) {
            return Notation.TIME;
        }
        return type == ZoneId.class ? Notation.ZONE : null;
    }

    private static Map<String, Object> words(Class<?> type) {
        Map<String, Object> words = new LinkedHashMap<>();
        for (Object constant : type.getEnumConstants()) {
            words.put(((Word) constant).word(), constant);
        }
        return words;
    }
}
