package housewright.store.sqlite;

import housewright.app.ProjectStore.Backup;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Which of the routine backups are kept: all of the last {@value #DAYS} days that have one, and the newest of each of the
 * {@value #WEEKS} weeks before that have one. Days and weeks (from Monday) are those of the backups, in UTC: a clock that
 * goes wrong makes none be dropped that would have been kept, and the newest always is.
 */
final class BackupsKept {
    private static final int DAYS = 7;
    private static final int WEEKS = 12;

    private BackupsKept() {}

    /** Newest first. */
    static List<Backup> toDrop(List<Backup> backups) {
        Set<LocalDate> days = new HashSet<>();
        Set<LocalDate> weeks = new HashSet<>();
        List<Backup> dropped = new ArrayList<>();
        for (Backup each : newestFirst(backups)) {
            LocalDate day = each.at().atOffset(ZoneOffset.UTC).toLocalDate();
            if (days.contains(day) || days.size() < DAYS) {
                days.add(day);
                continue;
            }
            LocalDate week = day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
            if (weeks.size() == WEEKS || !weeks.add(week)) {
                dropped.add(each);
            }
        }
        return dropped;
    }

    private static List<Backup> newestFirst(List<Backup> backups) {
        return backups.stream()
                .sorted(Comparator.comparing(Backup::at).reversed())
                .toList();
    }
}
