package housewright.paper;

import housewright.model.Hanging;
import housewright.model.Hire;
import housewright.model.Place;
import housewright.model.Words;
import housewright.signal.Moment;
import housewright.signal.Present;
import housewright.study.Study;
import housewright.work.WorkTask;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** For each hired thing and day what is done with it, in working order. */
final class LiftDays extends Titled {
    LiftDays() {
        super(
                "lift-days",
                "Lift-day sheet",
                "Who is on the lift, and who is below it",
                "What is done with the lift, in which order, where, and what hangs there?");
    }

    @Override
    public List<Sheet> sheets(Study study, PaperOptions options) {
        List<Planned> all = Planned.all(study);
        List<Sheet> sheets = new ArrayList<>();
        for (Hire hire : study.project().hires().values()) {
            Planned.byDay(all.stream()
                            .filter(each -> each.plan().hires().contains(hire.id()))
                            .toList())
                    .forEach((day, tasks) -> sheets.add(sheet(study, hire, day, tasks)));
        }
        return sheets;
    }

    private Sheet sheet(Study study, Hire hire, LocalDate day, List<Planned> tasks) {
        Say say = Say.of(study.project());
        List<Row> rows = new ArrayList<>();
        tasks.forEach(each -> rows.add(row(study, each, say)));
        List<Block> blocks = new ArrayList<>();
        blocks.add(Cautions.LADDERS);
        blocks.add(Cautions.OVERHEAD);
        blocks.add(new Block.Text("Operator: trained as "
                + (hire.skill() == null ? "________" : hire.skill().replace('-', ' '))
                + ". Checked before use, by ________ at ________. Rescue from height: ________. "
                + "The lift's own limits for people, load and floor hold: ________."));
        blocks.add(new Block.Table(
                "lift",
                List.of(
                        Column.text("Time", 11),
                        Column.text("What", 33),
                        Column.text("Where", 16),
                        Column.number(say.lengthHead("Height"), 8),
                        Column.text("Who", 14),
                        Column.number(say.massHead("Weight"), 9),
                        Column.text("Point's stated limit", 21),
                        Column.text("Done", 6)),
                rows));
        return Sheet.lying(
                "lift-" + hire.id() + "-" + day, Words.said(hire.id()) + ", " + Planned.said(day), recipient(), blocks);
    }

    private static Row row(Study study, Planned each, Say say) {
        WorkTask task = each.task();
        Double height = task == null ? null : task.heightM();
        return new Row(
                each.key(),
                List.of(
                        Cell.of(each.time()),
                        Cell.of(each.title()),
                        Cell.of(each.places()),
                        Cell.orBlank(height == null ? null : say.length(height)),
                        Cell.of(Planned.said(each.plan().people())),
                        weight(study, task, say),
                        limit(study, task),
                        Cell.BOX));
    }

    /** Of all that the task is about; a line to write on where one weight is not known. */
    private static Cell weight(Study study, @Nullable WorkTask task, Say say) {
        double sum = 0;
        boolean any = false;
        for (String about : task == null ? List.<String>of() : task.about()) {
            if (about.startsWith("equipment.")) {
                Present thing = thing(study, about.substring("equipment.".length()));
                if (thing != null) {
                    if (thing.model() == null || thing.model().weight() == null) {
                        return Cell.BLANK;
                    }
                    sum += thing.model().weight().kilograms();
                    any = true;
                }
            }
        }
        return any ? Cell.of(say.mass(sum)) : Cell.NONE;
    }

    /** As it hangs after the work, else as it hangs today and is taken down. */
    private static @Nullable Present thing(Study study, String id) {
        Present after = study.at(Moment.target()).supplies().things().get(id);
        return after != null
                ? after
                : study.at(Moment.today()).supplies().things().get(id);
    }

    /** What may hang at each of its points and who stated it; a line to write on for each where nobody has. */
    private static Cell limit(Study study, @Nullable WorkTask task) {
        if (task == null || !task.overhead()) {
            return Cell.NONE;
        }
        List<Place> points = new ArrayList<>();
        for (String id : task.places()) {
            Place place = study.project().venue().places().get(id);
            if (place != null && place.hang() != null) {
                points.add(place);
            }
        }
        if (points.stream().allMatch(point -> said(point).isEmpty())) {
            return Cell.BLANK;
        }
        return points.size() == 1
                ? Cell.of(said(points.getFirst()))
                : Cell.of(points.stream()
                        .map(point ->
                                Words.said(point.id()) + " " + (said(point).isEmpty() ? "________" : said(point)))
                        .collect(Collectors.joining("; ")));
    }

    /** Empty where nobody has stated it. */
    private static String said(Place point) {
        Hanging hang = point.hang();
        return hang == null || hang.limit() == null
                ? ""
                : hang.limit() + ", " + Objects.requireNonNullElse(hang.statedBy(), "nobody named");
    }
}
