package housewright.file;

import housewright.model.Default;
import housewright.model.Doc;
import housewright.model.Key;
import housewright.model.ListForm;
import housewright.model.Project;
import housewright.model.Remarks;
import housewright.model.Shorthand;
import housewright.model.Tuple;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * How the file shows one record, learnt from its components and annotations. Made when a record is first met, since
 * start-up time counts and few files use every section.
 */
final class RecordForm {
    private static final ClassValue<RecordForm> FORMS = new ClassValue<>() {
        @Override
        protected RecordForm computeValue(Class<?> type) {
            return new RecordForm(type);
        }
    };

    /**
     * One key.
     *
     * @param index of the component, in the record or, for a remark, in its {@link Remarks}
     */
    record Part(String key, int index, boolean remark, ValueType type, RecordComponent component, Method accessor) {
        @Nullable
        String doc() {
            Doc doc = component.getAnnotation(Doc.class);
            return doc == null ? null : doc.value();
        }

        @Nullable
        String written() {
            Default absent = component.getAnnotation(Default.class);
            return absent == null ? null : absent.value();
        }
    }

    /** The value of an absent key, where it may be absent. */
    record Absence(boolean allowed, @Nullable Object value) {
        static final Absence REFUSED = new Absence(false, null);

        /** For a project that is put together in spite of an error, to look for more. */
        static final Absence NO_NUMBER = new Absence(false, 0);
    }

    private final Class<?> type;
    private final List<Part> parts = new ArrayList<>();
    private final Map<String, Part> byKey = new LinkedHashMap<>();
    private final @Nullable Absence[] absences;
    private final Constructor<?> constructor;
    private final @Nullable Method ofText;
    private final int size;
    private int idIndex = -1;
    private int remarksIndex = -1;
    private @Nullable Method remarksAccessor;
    private final boolean tuple;
    private final @Nullable Part listPart;
    private @Nullable List<Part> required;
    private @Nullable Object @Nullable [] blank;

    private RecordForm(Class<?> type) {
        this.type = type;
        RecordComponent[] components = type.getRecordComponents();
        size = components.length;
        Class<?>[] types = new Class<?>[size];
        for (int i = 0; i < size; i++) {
            types[i] = components[i].getType();
            add(components[i], i);
        }
        absences = new Absence[parts.size()];
        tuple = Tuple.class.isAssignableFrom(type);
        listPart = findListPart();
        try {
            constructor = type.getDeclaredConstructor(types);
            constructor.setAccessible(true);
            ofText = Shorthand.class.isAssignableFrom(type) ? type.getMethod("ofText", String.class) : null;
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException(type.getName() + " lacks what the file needs of it", e);
        }
    }

    private void add(RecordComponent component, int index) {
        if (component.getType() == Remarks.class) {
            remarksIndex = index;
            remarksAccessor = accessor(component);
            for (Part remark : of(Remarks.class).parts) {
                put(new Part(remark.key(), remark.index(), true, remark.type(), remark.component(), remark.accessor()));
            }
        } else if (component.getName().equals("id") && index == 0) {
            idIndex = index;
        } else {
            Key key = component.getAnnotation(Key.class);
            String name = key == null ? kebab(component.getName()) : key.value();
            ValueType value =
                    ValueType.of(component, TYPE_TABLES.contains(component.getName()) && type == Project.class);
            put(new Part(name, index, false, value, component, accessor(component)));
        }
    }

    private static final Set<String> TYPE_TABLES = Set.of("models", "cableTypes", "adapters");

    private static Method accessor(RecordComponent component) {
        Method accessor = component.getAccessor();
        accessor.setAccessible(true);
        return accessor;
    }

    private void put(Part part) {
        parts.add(part);
        if (byKey.put(part.key(), part) != null) {
            throw new IllegalStateException(type.getName() + " has the key " + part.key() + " twice");
        }
    }

    static RecordForm of(Class<?> type) {
        return FORMS.get(type);
    }

    private static String kebab(String name) {
        StringBuilder kebab = new StringBuilder(name.length() + 2);
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            if (c >= 'A' && c <= 'Z') {
                kebab.append('-').append((char) (c - 'A' + 'a'));
            } else {
                kebab.append(c);
            }
        }
        return kebab.toString();
    }

    Class<?> type() {
        return type;
    }

    /** In the order of the record, remarks last. */
    List<Part> parts() {
        return parts;
    }

    @Nullable
    Part find(String key) {
        return byKey.get(key);
    }

    Set<String> keys() {
        return byKey.keySet();
    }

    /** Shown under its id as the key. */
    boolean isEntity() {
        return idIndex >= 0;
    }

    boolean isTuple() {
        return tuple;
    }

    boolean hasShorthand() {
        return ofText != null;
    }

    /** The part that a list stands for, in a record with a list form. */
    @Nullable
    Part listPart() {
        return listPart;
    }

    private @Nullable Part findListPart() {
        if (ListForm.class.isAssignableFrom(type)) {
            for (Part part : parts) {
                if (part.type() instanceof ValueType.Many) {
                    return part;
                }
            }
        }
        return null;
    }

    /** The keys that must be there. */
    List<Part> required() {
        List<Part> known = required;
        if (known == null) {
            known = parts.stream().filter(part -> !absence(part).allowed()).toList();
            required = known; // alike, whoever is first
        }
        return known;
    }

    /** The components of the record with every key absent; of its remarks they are those of {@link Remarks}. */
    private @Nullable Object[] blank() {
        @Nullable Object[] known = blank;
        if (known == null) {
            known = new Object[size];
            for (Part part : parts) {
                if (!part.remark()) {
                    known[part.index()] = absence(part).value();
                }
            }
            if (remarksIndex >= 0) {
                known[remarksIndex] = Remarks.NONE;
            }
            blank = known; // alike, whoever is first
        }
        return known.clone();
    }

    /** A record in the making. */
    final class Draft {
        private final @Nullable Object[] values = blank();
        private @Nullable Object @Nullable [] remarks;
        private final boolean[] given = new boolean[parts.size()];

        void set(Part part, @Nullable Object value) {
            given[place(part)] = true;
            if (!part.remark()) {
                values[part.index()] = value;
                return;
            }
            if (remarks == null) {
                remarks = RecordForm.of(Remarks.class).blank();
            }
            remarks[part.index()] = value;
        }

        boolean has(Part part) {
            return given[place(part)];
        }

        /** @throws IllegalArgumentException where the record refuses its values */
        Object finish(@Nullable String id) {
            if (idIndex >= 0) {
                values[idIndex] = id;
            }
            if (remarks != null) {
                values[remarksIndex] = RecordForm.of(Remarks.class).make(remarks);
            }
            return make(values);
        }
    }

    private static final int REMARKS = Remarks.class.getRecordComponents().length;

    Draft draft() {
        return new Draft();
    }

    private int place(Part part) {
        return part.remark() ? parts.size() - REMARKS + part.index() : part.index() - (idIndex >= 0 ? 1 : 0);
    }

    private Object make(@Nullable Object[] values) {
        try {
            return constructor.newInstance(values);
        } catch (InvocationTargetException e) {
            throw asArgument(e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(type.getName(), e);
        }
    }

    /** The record that a scalar stands for. */
    Object ofText(String text) {
        if (ofText == null) {
            throw new IllegalStateException(type.getName() + " has no short form");
        }
        return invoke(ofText, text);
    }

    static Object invoke(Method method, String text) {
        try {
            return method.invoke(null, text);
        } catch (InvocationTargetException e) {
            throw asArgument(e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(method.toString(), e);
        }
    }

    private static IllegalArgumentException asArgument(InvocationTargetException e) {
        if (e.getCause() instanceof IllegalArgumentException refusal) {
            return refusal;
        }
        throw new IllegalStateException("A record failed where it should refuse", e);
    }

    Absence absence(Part part) {
        int place = place(part);
        Absence known = absences[place];
        if (known == null) {
            known = findAbsence(part);
            absences[place] = known; // the same answer whoever is first
        }
        return known;
    }

    private static Absence findAbsence(Part part) {
        String written = part.written();
        if (written != null) {
            return new Absence(true, Scalars.parse((ValueType.One) part.type(), written));
        }
        if (part.component().getAnnotatedType().isAnnotationPresent(Nullable.class)) {
            return new Absence(true, null);
        }
        return switch (part.type()) {
            case ValueType.Many many -> new Absence(true, List.of());
            case ValueType.Table table -> new Absence(true, Map.of());
            case ValueType.One one ->
                one.type() == boolean.class
                        ? new Absence(true, false)
                        : one.type() == int.class ? Absence.NO_NUMBER : Absence.REFUSED;
            case ValueType.Of of -> {
                Object empty = of.form().findEmpty();
                yield empty == null ? Absence.REFUSED : new Absence(true, empty);
            }
        };
    }

    /** The record with every key absent, or null where one must be there. */
    private @Nullable Object findEmpty() {
        for (Part part : parts) {
            if (!absence(part).allowed()) {
                return null;
            }
        }
        return draft().finish(null);
    }

    /** The value of a component. */
    @Nullable
    Object get(Part part, Object from) {
        try {
            Object holder = part.remark() && remarksAccessor != null ? remarksAccessor.invoke(from) : from;
            return part.accessor().invoke(holder);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(type.getName() + "." + part.key(), e);
        }
    }
}
