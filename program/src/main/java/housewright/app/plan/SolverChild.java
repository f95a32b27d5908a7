package housewright.app.plan;

import housewright.plan.Level;
import housewright.plan.Progress;
import housewright.plan.Schedule;
import housewright.plan.Solved;
import housewright.plan.cpsat.CpSatSolver;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** Solves one request from the input stream in a process of its own; not for people to start. */
public final class SolverChild {
    private SolverChild() {}

    public static void main(String[] args) throws IOException {
        PrintStream answers = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        System.setOut(System.err);
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        String line = in.readLine();
        if (line == null) {
            System.exit(2);
            return;
        }
        Wire.Ask ask = Wire.ask(line);
        CpSatSolver solver = new CpSatSolver();
        Thread listener = new Thread(() -> stopWhenTold(in, solver), "listener");
        listener.setDaemon(true);
        listener.start();
        Solved solved = solver.solve(ask.request(), ask.first(), new Progress() {
            @Override
            public void better(Schedule schedule, Level level) {
                answers.println(Wire.line(new Wire.Answer(schedule, level, null)));
            }

            @Override
            public void bound(Level level) {
                answers.println(Wire.line(new Wire.Answer(null, level, null)));
            }
        });
        answers.println(Wire.line(new Wire.Answer(null, null, solved)));
        System.exit(0);
    }

    private static void stopWhenTold(BufferedReader in, CpSatSolver solver) {
        try {
            in.readLine(); // a line to stop, or the end when the program is gone
        } catch (IOException e) {
            // then the program is gone as well
        }
        solver.stop();
    }
}
