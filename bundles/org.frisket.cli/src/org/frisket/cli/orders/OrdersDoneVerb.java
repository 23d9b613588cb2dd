package org.frisket.cli.orders;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.orders.OrderException;
import org.frisket.orders.work.PlannedRun;
import org.frisket.orders.work.RunBook;
import org.frisket.orders.work.RunMark;
import org.frisket.orders.work.RunPiece;
import org.frisket.orders.work.RunResult;
import org.frisket.orders.work.RunTime;
import org.frisket.orders.work.StockColour;
import org.frisket.orders.work.Step;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** What was done of a run. */
@Command(name = "done", description = "Says what was done of a run: pieces, time and stock. Without more all went as planned. Jobs that have all their pieces go on to the next stage.", sortOptions = false)
final class OrdersDoneVerb implements Callable<Integer> {

	@ParentCommand
	private OrdersVerb orders;

	@Parameters(paramLabel = "RUN", description = "Its number.")
	private long number;

	@Option(names = "--made", paramLabel = "NUMBER=PIECES", description = "How many pieces of a job came out well, in each of its stocks (default all that were left, less the spoiled ones); may be given several times.")
	private Map<Long, Integer> made = Map.of();

	@Option(names = "--spoiled", paramLabel = "NUMBER=PIECES", description = "How many pieces of a job were spoiled; may be given several times.")
	private Map<Long, Integer> spoiled = Map.of();

	@Option(names = "--used", paramLabel = "STOCK=AMOUNT", description = "Sheets that were used of a stock, or metres of a roll, spoiled ones among them (default what was planned); may be given several times.")
	private Map<String, BigDecimal> used = new LinkedHashMap<>();

	@Option(names = "--time", paramLabel = "TIME", description = "What it took, such as 12min or 1h 20min.")
	private String time;

	@Option(names = "--step", paramLabel = "print|cut", description = "What was done (default what comes next).")
	private String step;

	@Option(names = "--partly", description = "The rest of the run is still to come (default what is missing is to be laid again).")
	private boolean partly;

	@Option(names = "--off", description = "The run is called off: nothing more comes of it.")
	private boolean off;

	@Option(names = "--went-well", description = "Keeps the settings of the run for the next time, and counts its metres on the edges of its tools.")
	private boolean wentWell;

	@Option(names = "--keep-offcuts", description = "Keeps what is left of its sheets as leftovers of the studio.")
	private boolean keepOffcuts;

	@Option(names = "--remark", paramLabel = "TEXT", defaultValue = "", description = "For the history of its jobs.")
	private String remark;

	@Option(names = "--undo", description = "Takes back what was said last of this run.")
	private boolean undo;

	@Override
	public Integer call() throws Refusal {
		if (undo && off || (undo || off) && (!made.isEmpty() || !spoiled.isEmpty() || !used.isEmpty() || time != null || partly)) {
			throw new Refusal("--undo and --off stand alone");
		}
		RunResult result = orders.desk(studio -> {
			RunBook book = new RunBook(studio);
			return undo ? book.takeBack(number, orders.person()) : book.mark(number, mark(book.find(number)), orders.person());
		});
		if (orders.isJson()) {
			orders.out().println(json(result));
		} else {
			orders.out().println(RunText.line(result.run()));
			result.moves().forEach(move -> orders.out().println("job " + move.number() + ": " + OrderReport.word(move.from()) + " to "
					+ OrderReport.word(move.to())));
			result.notes().forEach(note -> orders.out().println("caution: " + note));
		}
		return Status.DONE;
	}

	private RunMark mark(PlannedRun run) throws IOException, OrderException, Refusal {
		Step next = run.next().orElseThrow(() -> new Refusal(
				"run " + number + " is done; --undo takes back what was said last"));
		if (off) {
			return RunMark.off(run);
		}
		Step chosen = step == null ? next : step();
		for (Long job : List.of(made.keySet(), spoiled.keySet()).stream().flatMap(keys -> keys.stream()).toList()) {
			if (!run.numbers().contains(job)) {
				throw new Refusal("job " + job + " is not on run " + number + "; on it are " + run.numbers());
			}
		}
		List<RunMark.Count> counts = new ArrayList<>();
		for (RunPiece piece : run.pieces()) {
			int bad = spoiled.getOrDefault(piece.number(), 0);
			int good = made.getOrDefault(piece.number(), Math.max(0, piece.left(chosen) - Math.max(0, bad)));
			if (piece.left(chosen) > 0 || good != 0 && made.containsKey(piece.number())) {
				counts.add(new RunMark.Count(piece.job(), piece.of(), good, bad));
			}
		}
		return new RunMark(chosen, counts, amounts(run), Optional.ofNullable(time).map(RunTime::parse), !partly, wentWell,
				keepOffcuts, remark);
	}

	private Step step() throws Refusal {
		try {
			return Step.valueOf(step.toUpperCase(Locale.ROOT));
		} catch (IllegalArgumentException e) {
			throw new Refusal("--step: print or cut, not “" + step + "”");
		}
	}

	private SortedMap<StockColour, BigDecimal> amounts(PlannedRun run) throws Refusal {
		SortedMap<StockColour, BigDecimal> amounts = new TreeMap<>(run.unused());
		for (Map.Entry<String, BigDecimal> each : used.entrySet()) {
			List<StockColour> meant = amounts.keySet().stream()
					.filter(of -> of.toString().equals(each.getKey()) || of.stock().equals(each.getKey())).toList();
			if (meant.size() != 1) {
				throw new Refusal("--used: “" + each.getKey() + "” is not one of the stocks of run " + number + ": "
						+ String.join(", ", amounts.keySet().stream().map(RunText::name).toList()));
			}
			amounts.put(meant.get(0), each.getValue());
		}
		return amounts;
	}

	private static JsonObject json(RunResult result) {
		JsonObject json = RunText.json(result.run());
		JsonArray moves = new JsonArray();
		for (RunResult.Move move : result.moves()) {
			JsonObject one = new JsonObject();
			one.addProperty("number", move.number());
			one.addProperty("from", OrderReport.word(move.from()));
			one.addProperty("to", OrderReport.word(move.to()));
			moves.add(one);
		}
		json.add("moves", moves);
		json.add("notes", RunText.strings(result.notes()));
		return json;
	}
}
