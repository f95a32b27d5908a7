package housewright.cli;

import housewright.app.Server;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Opens the whole job in a browser. */
@Command(
        name = "serve",
        header = "Opens projects in a browser, to be worked on.",
        description = {
            "FILE is a project file, which is taken into your projects, or opened again where it was taken before; or a file of projects. Without it your own projects are opened.",
            "They are kept in the folder housewright among your data, or in the folder that HOUSEWRIGHT_HOME names."
        })
final class ServeCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", arity = "0..1", description = "A project file, or a file of projects.")
    @Nullable
    String file;

    @Mixin
    ServeOptions options = new ServeOptions();

    private final Desk desk;

    ServeCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() {
        String wrong = options.wrong();
        if (wrong != null) {
            return desk.refuse(wrong);
        }
        return Serving.serve(desk, new Server.Wish(file, false, options.port, options.share), !options.noBrowser);
    }
}
