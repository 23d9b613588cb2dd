package org.frisket.cli.orders;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.frisket.cli.Frisket;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.Sheet;
import org.frisket.orders.OrderBook;
import org.frisket.studio.Studio;
import org.frisket.testkit.SampleJobs;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/** The papers of a job on the command line. */
class OrdersDocketVerbTest {

	@TempDir
	private Path folder;

	private record Answer(int status, String out, String err) {
	}

	@BeforeEach
	void stockTheShelf() {
		assertEquals(0, frisket("stock", "add", "--id", "harbour-blue", "--name", "Harbour blue", "--family", "card", "--weight",
				"216g/m2", "--price", "0.45 EUR").status());
	}

	@AfterEach
	void usualStudio() {
		Studio.choose(Optional.empty());
	}

	private Answer frisket(String... arguments) {
		List<String> all = new ArrayList<>(List.of(arguments));
		all.addAll(List.of("--studio", folder.resolve("studio").toString()));
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		int status = Frisket.run(all.toArray(String[]::new), new PrintStream(out, true, StandardCharsets.UTF_8),
				new PrintStream(err, true, StandardCharsets.UTF_8));
		return new Answer(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
	}

	/** Two tags on one sheet. */
	private String tags() throws Exception {
		Job job = SampleJobs.outline("M0 0H80V50H0Z", OperationKind.CUT);
		job.setTitle("Gift tags");
		job.setQuantity(2);
		job.getLayers().get(0).setStock("harbour-blue");
		Outline tag = (Outline) job.getLayers().get(0).getElements().get(0);
		Sheet sheet = Jobs.addSheet(job, "harbour-blue", 200, 200);
		Jobs.addPlacement(sheet, tag.getId(), 60, 60, 0);
		Jobs.addPlacement(sheet, tag.getId(), 60, 130, 0);
		Path file = folder.resolve("tags.frjob");
		JobFile.save(job, file);
		Answer taken = frisket("orders", "import", file.toString());
		assertEquals(0, taken.status(), taken.err());
		return taken.out().strip();
	}

	private Path paper(String name) {
		return folder.resolve(name + ".pdf");
	}

	@Test
	void allPapersOfAJobAreWritten() throws Exception {
		String number = tags();
		Answer answer = frisket("orders", "docket", number, "--out", paper("docket").toString(), "--proof",
				paper("proof").toString(), "--quote", paper("quote").toString(), "--costs", paper("costs").toString(), "--rate",
				"36 EUR", "--set", "tax=10", "--set", "extras=Ribbon=4.80; Delivery=6.90@5", "--set", "rounding=line", "--date",
				"2027-02-12", "--json");
		assertEquals(0, answer.status(), answer.err());
		for (String name : List.of("docket", "proof", "quote", "costs")) {
			byte[] bytes = Files.readAllBytes(paper(name));
			assertArrayEquals("%PDF".getBytes(StandardCharsets.US_ASCII), java.util.Arrays.copyOf(bytes, 4), name);
		}
		JsonObject said = JsonParser.parseString(answer.out()).getAsJsonObject();
		assertEquals("frisket:job:" + number, said.get("code").getAsString());
		assertEquals(2, said.getAsJsonArray("parts").get(0).getAsJsonObject().get("all").getAsInt());
		assertEquals(80, said.getAsJsonArray("parts").get(0).getAsJsonObject().get("width").getAsDouble(), 1e-6);
		assertEquals("Harbour blue", said.getAsJsonArray("sheets").get(0).getAsJsonObject().get("stock").getAsString());
		assertTrue(said.get("seconds").getAsDouble() > 0);
		JsonObject quote = said.getAsJsonObject("quote");
		assertEquals("EUR", quote.get("currency").getAsString());
		assertEquals("2027-03-14", quote.get("validUntil").getAsString());
		JsonObject material = quote.getAsJsonArray("lines").get(0).getAsJsonObject();
		assertEquals("material", material.get("kind").getAsString());
		assertEquals("0.45", material.get("price").getAsString());
		assertEquals("0.05", material.get("tax").getAsString());
		assertEquals(2, quote.getAsJsonArray("taxes").size());
		assertEquals(0, quote.getAsJsonArray("gaps").size());
	}

	@Test
	void papersAreNotedOnceAllOfThemAreWritten() throws Exception {
		String number = tags();
		Answer failed = frisket("orders", "docket", number, "--proof", paper("proof").toString(), "--out",
				folder.resolve("nowhere").resolve("docket.pdf").toString());
		assertEquals(2, failed.status());
		assertTrue(failed.err().contains("--out"), failed.err());
		assertFalse(Files.exists(paper("proof")));
		OrderBook book = new OrderBook(Studio.folder());
		assertEquals(List.of(), book.papers(Long.parseLong(number)));
		assertEquals(0, frisket("orders", "docket", number, "--out", paper("docket").toString(), "--proof",
				paper("proof").toString(), "--quote", paper("quote").toString(), "--rate", "36 EUR", "--by", "Ottoline").status());
		assertEquals(List.of("DOCKET docket.pdf Ottoline", "PROOF proof.pdf Ottoline", "QUOTE quote.pdf Ottoline"),
				book.papers(Long.parseLong(number)).stream()
						.map(paper -> paper.kind() + " " + paper.remark() + " " + paper.person()).toList());
	}

	@Test
	void whatTheStudioKeepsHoldsAndFlagsGoBefore() throws Exception {
		String number = tags();
		assertEquals(0, frisket("orders", "docket", "--keep", "--set", "tax=10", "--rate", "36 EUR").status());
		assertTrue(frisket("orders", "docket", "--list").out().contains("tax=10: "));
		assertEquals("10", rate(number));
		assertEquals("5", rate(number, "--set", "tax=5"));
		assertEquals("10", rate(number));
		Answer wrong = frisket("orders", "docket", "--keep", "--set", "tax=much");
		assertEquals(2, wrong.status());
		assertTrue(wrong.err().contains("tax"), wrong.err());
		assertEquals("10", rate(number));
	}

	/** The rate of tax on a quote. */
	private String rate(String number, String... more) throws Exception {
		List<String> all = new ArrayList<>(List.of("orders", "docket", number, "--quote", paper("quote").toString(), "--json"));
		all.addAll(List.of(more));
		Answer answer = frisket(all.toArray(String[]::new));
		assertEquals(0, answer.status(), answer.err());
		return JsonParser.parseString(answer.out()).getAsJsonObject().getAsJsonObject("quote").getAsJsonArray("taxes").get(0)
				.getAsJsonObject().get("rate").getAsBigDecimal().stripTrailingZeros().toPlainString();
	}

	@Test
	void orderWithoutADesignHasADocket() throws Exception {
		Answer added = frisket("orders", "add", "--title", "Ferry banner");
		Answer answer = frisket("orders", "docket", added.out().strip(), "--out", paper("docket").toString());
		assertEquals(0, answer.status(), answer.err());
		byte[] first = Files.readAllBytes(paper("docket"));
		frisket("orders", "docket", added.out().strip(), "--out", paper("docket").toString());
		assertArrayEquals(first, Files.readAllBytes(paper("docket")));
	}

	@Test
	void wrongUseIsRefusedAndNothingIsWritten() throws Exception {
		String number = tags();
		String file = paper("quote").toString();
		for (String[] wrong : new String[][] { { "--quote", file, "--set", "taxes=19" }, { "--quote", file, "--set", "tax=x" },
				{ "--quote", file, "--set", "extras=Ribbon" }, { "--quote", file, "--rate", "36" },
				{ "--quote", file, "--rate", "36 CHF" }, { "--quote", folder.resolve("quote.txt").toString() }, {} }) {
			List<String> all = new ArrayList<>(List.of("orders", "docket", number));
			all.addAll(List.of(wrong));
			Answer answer = frisket(all.toArray(String[]::new));
			assertEquals(2, answer.status(), String.join(" ", wrong) + answer.out());
			assertFalse(answer.err().contains("mistake of the program"), answer.err());
			assertFalse(Files.exists(paper("quote")), String.join(" ", wrong));
		}
		assertEquals(2, frisket("orders", "docket", "99", "--out", file).status());
	}

	@Test
	void optionsOfAQuoteAreListed() {
		String list = frisket("orders", "docket", "--list").out();
		assertTrue(list.contains("rounding=total: ") && list.contains("(total, line)") && list.contains("material-mark-up=0"), list);
	}

	@Test
	void everyVerbOfTheOrderBookHasItsHelp() {
		for (String verb : List.of("list", "show", "add", "stage", "docket", "import", "export", "database", "backup", "restore")) {
			Answer answer = frisket("orders", verb, "--help");
			assertEquals(0, answer.status(), answer.err());
			assertTrue(answer.out().startsWith("Usage: frisket orders " + verb), answer.out());
		}
	}
}
