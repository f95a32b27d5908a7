package housewright.app;

/** The user's own projects, without a server; whoever opens them closes their store. */
@FunctionalInterface
public interface OwnProjects {
    Projects open() throws StoreException;
}
