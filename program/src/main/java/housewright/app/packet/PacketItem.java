package housewright.app.packet;

import java.util.List;

/**
 * One thing that somebody on site is asked.
 *
 * @param key names it within the packet
 * @param kind {@code questions} for what a person has asked, {@code survey} for what the model lacks
 * @param subject section and id, such as {@code venue.places.desk}
 * @param field of the subject that the answer goes into
 * @param about what it is about, in words; may be empty
 * @param hint how to answer; may be empty
 * @param units to choose from for a reading; none where it is no reading
 * @param choices to choose from; none where anything may be said
 * @param caution where looking can hurt; may be empty
 * @param was what stands there now, to tell later whether it has changed
 * @param due until when, in words; may be empty
 */
public record PacketItem(
        String key,
        String kind,
        String subject,
        String field,
        String about,
        String asks,
        String hint,
        List<String> units,
        List<String> choices,
        String caution,
        String was,
        String due) {
    public PacketItem {
        units = List.copyOf(units);
        choices = List.copyOf(choices);
    }
}
