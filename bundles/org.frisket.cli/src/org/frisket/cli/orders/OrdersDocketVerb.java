package org.frisket.cli.orders;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.cli.work.Report;
import org.frisket.cli.work.Stocks;
import org.frisket.export.plan.StudioWorkshop;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.options.OptionValues;
import org.frisket.model.WholeFile;
import org.frisket.orders.OrderBook;
import org.frisket.orders.OrderException;
import org.frisket.orders.PaperKind;
import org.frisket.orders.paper.BookPapers;
import org.frisket.orders.paper.Docket;
import org.frisket.orders.paper.DocketFacts;
import org.frisket.orders.paper.JobWork;
import org.frisket.orders.paper.PaperForm;
import org.frisket.orders.paper.Proof;
import org.frisket.orders.paper.quote.QuoteOptions;
import org.frisket.orders.paper.quote.QuotePaper;
import org.frisket.orders.paper.quote.QuoteRules;
import org.frisket.orders.paper.quote.QuoteSheet;
import org.frisket.orders.paper.quote.StudioQuote;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.prepare.layout.Paper;
import org.frisket.run.Rate;
import org.frisket.studio.StudioFolder;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** The papers of a job. */
@Command(name = "docket", description = "Writes the papers of a job as PDF: the docket that goes with it, a proof for the customer, a quote. Says what is to be minded.", sortOptions = false)
final class OrdersDocketVerb implements Callable<Integer> {

	private static final String PDF = ".pdf";

	@ParentCommand
	private OrdersVerb orders;

	@Parameters(arity = "0..1", paramLabel = "NUMBER", description = "Of the job.")
	private Long number;

	@Option(names = "--out", paramLabel = "FILE.pdf", description = "The docket.")
	private Path docket;

	@Option(names = "--proof", paramLabel = "FILE.pdf", description = "What the customer is shown and signs.")
	private Path proof;

	@Option(names = "--quote", paramLabel = "FILE.pdf", description = "What is asked for the job.")
	private Path quote;

	@Option(names = "--costs", paramLabel = "FILE.pdf", description = "The same with what it costs, for the studio only.")
	private Path costs;

	@Option(names = "--set", paramLabel = "OPTION=VALUE", description = "How the quote is made, instead of what the studio keeps; see --list.")
	private Map<String, String> values = Map.of();

	@Option(names = "--keep", description = "Keeps what --set and --rate say for all quotes of the studio to come; needs no NUMBER.")
	private boolean keep;

	@Option(names = "--list", description = "Lists the options of a quote instead, as the studio keeps them.")
	private boolean list;

	@Option(names = "--rate", paramLabel = "PRICE", description = "What an hour of the machine costs, such as \"30.00 EUR\" (default the studio's preference " + Rate.KEY + ").")
	private String rate;

	@Option(names = "--date", paramLabel = "DAY", description = "Of the quote, such as 2027-03-01 (default none: the same job makes the same file on any day).")
	private LocalDate date;

	@Option(names = "--machine", paramLabel = "ID", defaultValue = "", description = "One of the studio's machines (default that of its latest run, or its only one).")
	private String machine;

	@Option(names = "--paper", paramLabel = "PAPER", defaultValue = "A4", description = "A4 or Letter (default ${DEFAULT-VALUE}).")
	private Paper paper;

	@Option(names = "--inches", description = "Lengths in inches, not mm.")
	private boolean inches;

	@Option(names = "--tolerance", paramLabel = "LENGTH", defaultValue = "0.02mm", description = "Greatest deviation of curves (default ${DEFAULT-VALUE}).")
	private Tolerance tolerance;

	@Override
	public Integer call() throws Refusal {
		if (list) {
			return orders.desk(this::listed);
		}
		if (number == null) {
			if (keep) {
				return orders.desk(this::kept);
			}
			throw new Refusal("say which job");
		}
		if (Stream.of(docket, proof, quote, costs).allMatch(file -> file == null) && !orders.isJson()) {
			throw new Refusal("say what to write: --out, --proof, --quote, --costs, or --json");
		}
		for (Path file : Stream.of(docket, proof, quote, costs).filter(file -> file != null).toList()) {
			if (!file.toString().toLowerCase(Locale.ROOT).endsWith(PDF)) {
				throw new Refusal("papers are " + PDF + " files, not “" + file + "”");
			}
		}
		return orders.studio(this::papers);
	}

	private int listed(StudioFolder studio) throws IOException {
		Map<String, String> kept = new StudioQuote(studio).texts();
		QuoteOptions.options().forEach(option -> orders.out().printf("%s=%s: %s%s%n", option.name(), kept.get(option.name()),
				option.description(), option.choices().isEmpty() ? "" : " (" + String.join(", ", option.choices()) + ")"));
		return Status.DONE;
	}

	private int kept(StudioFolder studio) throws IOException {
		Map<String, String> texts = new LinkedHashMap<>(values);
		if (rate != null) {
			texts.put("rate", rate);
		}
		new StudioQuote(studio).keep(texts);
		return Status.DONE;
	}

	private int papers(StudioFolder studio) throws Refusal {
		try {
			boolean asksQuote = quote != null || costs != null;
			// what the studio keeps of quotes is none of a docket's business, right or wrong
			QuoteRules rules = asksQuote ? new StudioQuote(studio).rules(values)
					: QuoteOptions.rules(OptionValues.of(QuoteOptions.options(), values));
			Optional<Rate> hour = rate(studio);
			BookPapers papers = new BookPapers(studio, new JobPreparer(FontLibraries.installed()), Stocks.ofLayers());
			JobWork work = papers.work(new OrderBook(studio).open(number).job(),
					papers.means(new StudioWorkshop(studio, machine).get(), hour, tolerance), Monitor.NONE);
			Optional<QuoteSheet> asked = asksQuote
					? Optional.of(QuoteSheet.of(work, hour, rules, Optional.ofNullable(date)))
					: Optional.empty();
			PaperForm form = new PaperForm(paper, inches, ZoneId.systemDefault());
			write("--out", docket, out -> Docket.write(work, form, out));
			write("--proof", proof, out -> Proof.write(work, form, out));
			write("--quote", quote, out -> QuotePaper.write(asked.orElseThrow(), form, out));
			write("--costs", costs, out -> QuotePaper.writeCosts(asked.orElseThrow(), form, out));
			if (keep) {
				kept(studio);
			}
			answer(work, DocketFacts.of(work, form), asked);
			note(papers);
			return work.isBlocked() ? Status.BLOCKED : Status.DONE;
		} catch (IOException | OrderException | IllegalArgumentException e) {
			throw new Refusal(e);
		}
	}

	/** All papers are there by now. A desk that may only look things up has its papers too; that is said. */
	private void note(BookPapers papers) {
		Map<PaperKind, Path> written = new LinkedHashMap<>();
		written.put(PaperKind.DOCKET, docket);
		written.put(PaperKind.PROOF, proof);
		written.put(PaperKind.QUOTE, quote);
		written.forEach((kind, file) -> {
			try {
				if (file != null) {
					papers.note(number, kind, file, orders.person());
				}
			} catch (IOException | OrderException e) {
				orders.err().println("caution: the order book does not know of “" + file + "”: " + e.getMessage());
			}
		});
	}

	private Optional<Rate> rate(StudioFolder studio) throws Refusal {
		try {
			return rate == null ? Rate.of(studio) : Optional.of(Rate.parse(rate));
		} catch (IOException | IllegalArgumentException e) {
			throw new Refusal((rate == null ? Rate.KEY : "--rate") + ": " + e.getMessage());
		}
	}

	private static void write(String option, Path file, BookPapers.Writing writing) throws Refusal {
		if (file == null) {
			return;
		}
		try {
			BookPapers.write(writing, file);
		} catch (IOException e) {
			throw new Refusal(option + ": " + WholeFile.reason(e));
		}
	}

	private void answer(JobWork work, DocketFacts facts, Optional<QuoteSheet> asked) {
		if (orders.isJson()) {
			orders.out().println(DocketJson.text(facts, asked));
			return;
		}
		asked.ifPresent(sheet -> orders.out().println("total " + DocketJson.amount(sheet.sums().total()) + ' '
				+ sheet.currency().getCurrencyCode()));
		List<String> gaps = asked.map(QuoteSheet::gaps).orElse(List.of());
		gaps.forEach(gap -> orders.out().println("caution: " + gap));
		work.problems().forEach(problem -> orders.out().println("caution: " + problem));
		new Report(orders.out()).findings(work.findings());
	}
}
