package housewright.paper;

import housewright.drawing.Drawings;
import housewright.drawing.State;
import housewright.drawing.Trade;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.List;

/** Which socket is joined to which, system by system. */
final class SignalDrawings extends Titled {
    SignalDrawings() {
        super("signal-drawings", "Signal drawings", "Who wires and who looks for a fault", "What is joined to what?");
    }

    @Override
    public List<Sheet> sheets(Study study, PaperOptions options) {
        Drawings drawings = Drawn.of(study, options);
        List<Sheet> sheets = new ArrayList<>();
        for (Trade trade : drawings.trades(State.TARGET)) {
            drawings.signal(trade, State.TARGET).forEach(drawn -> sheets.add(Drawn.sheet(drawn, recipient())));
        }
        return sheets;
    }
}
