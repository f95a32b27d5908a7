package housewright.card;

import housewright.model.Carries;
import housewright.model.Kind;

/** What is missing in a room. */
enum Trouble {
    SOUND(Carries.AUDIO, Kind.MIXER, "no-sound", "No sound in the ", "audio", "sound"),
    PICTURE(Carries.PICTURE, Kind.VISION_MIXER, "no-picture", "No picture in the ", "picture", "picture");

    final Carries carries;
    final Kind desk;
    final String id;
    final String title;
    final String skill;
    final String about;

    Trouble(Carries carries, Kind desk, String id, String title, String skill, String about) {
        this.carries = carries;
        this.desk = desk;
        this.id = id;
        this.title = title;
        this.skill = skill;
        this.about = about;
    }
}
