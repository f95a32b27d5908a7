package housewright.web;

import housewright.app.OpenProject;
import housewright.app.StoreException;
import io.javalin.http.sse.SseClient;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;

/** The open windows, and telling them that a project has changed. */
final class Live implements AutoCloseable {
    /** Often enough that no proxy or phone gives the connection up, and that a closed window is noticed. */
    private static final int BEAT_SECONDS = 20;

    /** How soon windows show what another process has kept in the same store. */
    private static final int LOOK_SECONDS = 2;

    private static final int MOST_WINDOWS = 500;

    private final Map<String, Set<Window>> windows = new ConcurrentHashMap<>();
    private final Map<String, OpenProject> watched = new ConcurrentHashMap<>();
    /** Sending waits for slow readers, so never on the thread that edits. */
    private final ExecutorService senders = Executors.newVirtualThreadPerTaskExecutor();

    private final ScheduledExecutorService beat = Executors.newSingleThreadScheduledExecutor(
            Thread.ofPlatform().daemon().name("live").factory());

    private record Window(SseClient client, Session session) {}

    private final Door door;
    private final List<ScheduledFuture<?>> beating;

    Live(Door door) {
        this.door = door;
        this.beating = List.of(
                beat.scheduleWithFixedDelay(this::beat, BEAT_SECONDS, BEAT_SECONDS, TimeUnit.SECONDS),
                beat.scheduleWithFixedDelay(this::look, LOOK_SECONDS, LOOK_SECONDS, TimeUnit.SECONDS));
    }

    /** Tells this window how far the project is, now and with each revision from now on, until it goes. */
    void join(OpenProject project, SseClient client, Session session) {
        if (windows.values().stream().mapToInt(Set::size).sum() >= MOST_WINDOWS) {
            client.close();
            return;
        }
        Window window = new Window(client, session);
        Set<Window> of = windows.computeIfAbsent(project.id(), id -> ConcurrentHashMap.newKeySet());
        of.add(window);
        client.keepAlive();
        client.onClose(() -> of.remove(window));
        if (watched.putIfAbsent(project.id(), project) == null) {
            project.watch((before, now, step) -> tell(project.id(), now.revision()));
        }
        send(window, "changed", project.now().revision());
    }

    /** Tells who looks at a project that papers of it were printed. */
    void printed(String project) {
        for (Window window : windows.getOrDefault(project, Set.of())) {
            send(window, "printed", 0);
        }
    }

    private void tell(String project, long revision) {
        for (Window window : windows.getOrDefault(project, Set.of())) {
            send(window, "changed", revision);
        }
    }

    private void send(Window window, String event, long revision) {
        senders.execute(() -> {
            if (door.stillWelcome(window.session())) {
                window.client().sendEvent(event, Long.toString(revision));
            } else {
                window.client().close();
            }
        });
    }

    private void look() {
        watched.forEach((id, project) -> {
            if (!windows.getOrDefault(id, Set.of()).isEmpty()) {
                try {
                    project.refresh();
                } catch (StoreException | RuntimeException e) {
                    // the next page that is asked for says it, and the next look may go well
                }
            }
        });
    }

    private void beat() {
        List<Window> all = new ArrayList<>();
        windows.values().forEach(all::addAll);
        for (Window window : all) {
            senders.execute(() -> {
                if (door.stillWelcome(window.session())) {
                    window.client().sendComment("");
                } else {
                    window.client().close();
                }
            });
        }
    }

    @Override
    public void close() {
        beating.forEach(each -> each.cancel(false));
        beat.shutdownNow();
        windows.values().forEach(of -> of.forEach(window -> window.client().close()));
        senders.shutdown();
    }
}
