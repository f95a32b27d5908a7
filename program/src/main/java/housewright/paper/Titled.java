package housewright.paper;

/** A paper that says who it is. */
abstract class Titled implements Paper {
    private final String id;
    private final String title;
    private final String recipient;
    private final String question;

    Titled(String id, String title, String recipient, String question) {
        this.id = id;
        this.title = title;
        this.recipient = recipient;
        this.question = question;
    }

    @Override
    public final String id() {
        return id;
    }

    @Override
    public final String title() {
        return title;
    }

    @Override
    public final String recipient() {
        return recipient;
    }

    @Override
    public final String question() {
        return question;
    }
}
