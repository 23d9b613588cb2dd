package org.frisket.cli.orders;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.cli.sheets.LayingOptions;
import org.frisket.cli.work.Stocks;
import org.frisket.geometry.Monitor;
import org.frisket.model.JobFile;
import org.frisket.orders.OrderBook;
import org.frisket.orders.OrderException;
import org.frisket.orders.stages.StageRuleException;
import org.frisket.orders.work.Gang;
import org.frisket.orders.work.PlannedRun;
import org.frisket.orders.work.RunTime;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.run.paper.Warnings;
import org.frisket.sheets.imposing.LayingChoices;
import org.frisket.sheets.imposing.NoRoom;
import org.frisket.studio.StudioFolder;

import com.google.gson.JsonObject;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Jobs of the order book on sheets together. */
@Command(name = "gang", description = "Lays jobs of the order book together, as many pieces as each still lacks, and keeps that as a run; writes its number.", sortOptions = false)
final class OrdersGangVerb implements Callable<Integer> {

	@ParentCommand
	private OrdersVerb orders;

	@Parameters(arity = "1..*", paramLabel = "NUMBER", description = "Of jobs that are approved or printed.")
	private List<Long> numbers;

	@Mixin
	private LayingOptions laying = new LayingOptions();

	@Option(names = "--apart", description = "Every piece of a wording or another element by itself.")
	private boolean apart;

	@Option(names = "--by-job", description = "No sheet holds parts of two jobs.")
	private boolean byJob;

	@Option(names = "--anyway", description = "Even if a rule of the studio is against it; see frisket orders rules.")
	private boolean anyway;

	@Option(names = "--out", paramLabel = "FILE.frjob", description = "The layout as a file too; its guests are looked for in the order book.")
	private Path file;

	@Override
	public Integer call() throws Refusal {
		if (file != null && !file.toString().toLowerCase(Locale.ROOT).endsWith(JobFile.ENDING)) {
			throw new Refusal("--out: the layout is a " + JobFile.ENDING + " file, not “" + file + "”");
		}
		return orders.desk(this::laid);
	}

	private int laid(StudioFolder studio) throws IOException, OrderException, Refusal {
		LayingChoices choices = laying.over(null, apart, byJob);
		Gang gang = new Gang(studio, Clock.systemUTC(), new JobPreparer(FontLibraries.installed()), Stocks.ofLayers());
		Gang.Laid laid = gang.lay(numbers, choices, laying.budget(choices.seed()), better -> {
			// only the best is kept
		}, Monitor.NONE);
		PlannedRun run = kept(gang, laid);
		if (file != null) {
			JobFile.save(new OrderBook(studio).open(run.job()).job(), file);
		}
		if (orders.isJson()) {
			JsonObject json = RunText.json(run);
			json.addProperty("utilisation", laid.plan().utilisation());
			json.add("left", RunText.strings(laid.plan().left().stream().map(NoRoom::message).toList()));
			json.add("findings", RunText.strings(laid.findings().stream().map(Finding::message).toList()));
			json.add("cautions", RunText.strings(cautions(laid)));
			orders.out().println(json);
		} else {
			print(run, laid);
		}
		return laid.plan().left().isEmpty() && laid.findings().stream().noneMatch(Finding::isBlocking) ? Status.DONE
				: Status.BLOCKED;
	}

	private PlannedRun kept(Gang gang, Gang.Laid laid) throws IOException, OrderException, Refusal {
		try {
			return gang.keep(laid, orders.person(), anyway);
		} catch (StageRuleException against) {
			throw new Refusal(against.getMessage() + "; --anyway does it this once");
		}
	}

	private void print(PlannedRun run, Gang.Laid laid) {
		PrintWriter out = orders.out();
		out.println(run.number());
		out.printf(Locale.ROOT, "%d parts on %d sheets, %.2f %% of them used, about %s, kept as job %d%n", laid.plan().parts(),
				run.sheets().size(), 100 * laid.plan().utilisation(), RunTime.text(run.seconds()), run.job());
		run.pieces().forEach(piece -> out.println(piece.number() + " " + piece.title() + ", " + RunText.name(piece.of())
				+ ", pieces: " + piece.pieces()));
		laid.plan().left().forEach(left -> out.println(left.message()));
		laid.findings().forEach(finding -> out.println(finding.message()));
		cautions(laid).forEach(caution -> out.println("caution: " + caution));
	}

	/** As the run sheet has them. */
	private static List<String> cautions(Gang.Laid laid) {
		Set<String> cautions = new LinkedHashSet<>();
		laid.runs().stream().map(Warnings::of).forEach(each -> cautions.addAll(each.blocking()));
		laid.runs().stream().map(Warnings::of).forEach(each -> cautions.addAll(each.others()));
		return List.copyOf(cautions);
	}
}
