package org.frisket.cli.stock;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.zip.ZipEntry;

import org.frisket.cli.Frisket;
import org.frisket.material.Stock;
import org.frisket.material.StockFamily;
import org.frisket.material.catalogue.StockCatalogue;
import org.frisket.studio.Studio;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.Bundle;
import org.osgi.framework.FrameworkUtil;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/** The studio's stock, and what paper weighs, on the command line. */
class StockVerbTest {

	@TempDir
	private Path folder;

	private record Answer(int status, String out, String err) {
	}

	private static Answer frisket(String... arguments) {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		int status = Frisket.run(arguments, new PrintStream(out, true, StandardCharsets.UTF_8),
				new PrintStream(err, true, StandardCharsets.UTF_8));
		return new Answer(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
	}

	/** At the shelf of the test's own studio. */
	private Answer stock(String... arguments) {
		List<String> all = new ArrayList<>(List.of("stock"));
		all.addAll(List.of(arguments));
		all.addAll(List.of("--studio", folder.resolve("studio").toString()));
		return frisket(all.toArray(String[]::new));
	}

	private static JsonObject json(Answer answer) {
		assertEquals(0, answer.status(), answer.err());
		return JsonParser.parseString(answer.out()).getAsJsonObject();
	}

	private static void assertRefused(String reason, Answer answer) {
		assertEquals(2, answer.status(), answer.out());
		assertTrue(answer.err().contains(reason), answer.err());
		assertFalse(answer.err().contains("mistake of the program"), answer.err());
	}

	private JsonArray list() {
		return json(stock("list", "--json")).getAsJsonArray("stock");
	}

	@AfterEach
	void backToTheUsualStudio() {
		Studio.choose(Optional.empty());
	}

	private static List<Double> limits(Answer inspected, String kind) {
		List<Double> limits = new ArrayList<>();
		JsonParser.parseString(inspected.out()).getAsJsonObject().getAsJsonArray("findings").forEach(each -> {
			JsonObject finding = each.getAsJsonObject();
			if (finding.get("id").getAsString().equals(kind)) {
				limits.add(finding.get("limit").getAsDouble());
			}
		});
		return limits;
	}

	@Test
	void makereadyChecksByTheShelf() {
		String job = folder.resolve("tags.frjob").toString();
		String studio = folder.resolve("studio").toString();
		json(stock("add", "--name", "Pearl", "--id", "pearl-300", "--family", "card", "--caliper", "0.6mm", "--size", "A6",
				"--json"));
		Answer composed = frisket("compose", "--text", "Harbour Lane", "--font", "Liberation Serif", "--height", "20mm",
				"--stock", "pearl-300", "--out", job, "--studio", studio);
		assertTrue(composed.status() < 2, composed.err());
		assertTrue(composed.out().contains("limit 1.800 mm"), composed.out());
		Answer own = frisket("inspect", job, "--json", "--studio", studio);
		assertEquals(Set.of(1.8), Set.copyOf(limits(own, "stroke-too-thin")), own.out());
		Answer card = frisket("inspect", job, "--stock", "card", "--json", "--studio", studio);
		assertEquals(Set.of(1.0), Set.copyOf(limits(card, "stroke-too-thin")), card.out());
		assertTrue(JsonParser.parseString(own.out()).getAsJsonObject().getAsJsonArray("bases").get(0).getAsString()
				.startsWith("Limits of Pearl: from its caliper of 0.6 mm, common practice without a source"), own.out());
		assertTrue(frisket("inspect", job, "--studio", studio).out()
				.contains("Limits of Pearl: from its caliper of 0.6 mm, common practice without a source"));
		assertRefused("there is no stock “velvet”; known are card, heavy-card, paper, film, pearl-300",
				frisket("inspect", job, "--stock", "velvet", "--studio", studio));
		assertRefused("velvet", frisket("compose", "--text", "H", "--font", "Liberation Serif", "--height", "20mm", "--stock",
				"velvet", "--out", job, "--studio", studio));
		Answer large = frisket("compose", "--text", "H", "--font", "Liberation Serif", "--height", "160mm", "--stock",
				"pearl-300", "--out", job, "--studio", studio);
		assertTrue(large.out().contains("piece-too-large"), large.out());
	}

	@Test
	void weightsAreTheSameInEveryGrade() {
		JsonObject cover = json(frisket("stock", "convert", "65 lb cover", "--json"));
		assertEquals(175.77, cover.get("grammage").getAsDouble(), 0.005);
		assertEquals(46.75, cover.getAsJsonObject("grades").get("bond").getAsDouble(), 0.005);
		assertEquals(65, cover.getAsJsonObject("grades").get("cover").getAsDouble(), 1e-6);
		assertEquals(110.94, json(frisket("stock", "convert", "300", "gsm", "--json")).getAsJsonObject("grades")
				.get("cover").getAsDouble(), 0.005);
		assertTrue(frisket("stock", "convert", "65 lb cover").out().startsWith("175.77 g/m²"));
		assertEquals(0.254, json(frisket("stock", "convert", "10 pt", "--json")).get("mm").getAsDouble());
		assertTrue(frisket("stock", "convert", "0.3 mm").out().contains("11.811 points (mils) = 300 µm"));
	}

	@Test
	void poundsWithoutAGradeAreTakenForNone() {
		Answer said = frisket("stock", "convert", "65 lb");
		assertEquals(0, said.status());
		assertTrue(said.out().contains("175.77 g/m² as cover") && said.out().contains("244.38 g/m² as bond"), said.out());
		assertTrue(said.out().contains("stock weigh --size"), said.out());
		JsonObject answer = json(frisket("stock", "convert", "65 lb", "--json"));
		assertTrue(answer.get("grammage").isJsonNull());
		assertEquals(244.38, answer.getAsJsonObject("candidates").get("bond").getAsDouble(), 0.005);
		assertRefused("“65 lb blotting” has the unknown unit “blotting”", frisket("stock", "convert", "65 lb blotting"));
		assertRefused("beyond the 5000 g/m²", frisket("stock", "convert", "10000 gsm"));
	}

	@Test
	void scaleAndRuleFindOut() {
		String[] weigh = { "stock", "weigh", "--size", "12x12in", "--sheets", "10", "--mass", "163.3g", "--json" };
		JsonObject answer = json(frisket(weigh));
		assertEquals(175.78, answer.get("grammage").getAsDouble(), 0.01);
		assertEquals("cover", answer.getAsJsonArray("nearest").get(0).getAsJsonObject().get("grade").getAsString());
		Answer says = frisket("stock", "weigh", "--size", "12x12in", "--sheets", "10", "--mass", "163.3g", "--says", "65 lb");
		assertTrue(says.out().lines().anyMatch(line -> line.contains("65 lb cover") && line.endsWith("surely")), says.out());
		JsonObject stack = json(frisket("stock", "measure", "--stack", "12.5mm", "--sheets", "50", "--weight", "250gsm", "--json"));
		assertEquals(0.25, stack.get("mm").getAsDouble());
		assertEquals(1, stack.get("bulk").getAsDouble());
		assertRefused("no size", frisket("stock", "weigh", "--size", "big", "--mass", "3g"));
		assertRefused("has no unit", frisket("stock", "weigh", "--size", "A4", "--mass", "3"));
		assertRefused("number of sheets", frisket("stock", "measure", "--stack", "3mm", "--sheets", "0"));
	}

	@Test
	void stockIsAddedChangedCountedAndRemoved() {
		assertEquals(0, list().size());
		assertFalse(Files.exists(folder.resolve("studio/studio.mv.db")), "looking makes nothing");
		JsonObject added = json(stock("add", "--name", "Harbour white", "--family", "card", "--weight", "80 lb cover",
				"--caliper", "12mil", "--size", "12x12in", "--size", "roll 610mm", "--price", "0.45 eur", "--on-hand", "20",
				"--low-water", "5", "--notes", "two\\nlines", "--json"));
		assertEquals("harbour-white", added.get("id").getAsString());
		assertEquals(216.33, added.get("grammage").getAsDouble(), 0.005);
		assertEquals(0.3048, added.get("caliper").getAsDouble());
		assertEquals("measured", added.get("caliperSource").getAsString());
		assertRefused("named “harbour WHITE” already", stock("add", "--name", "harbour WHITE", "--family", "card", "--weight", "200gsm", "--id", "x"));
		assertEquals(0, stock("set", "Harbour White", "--take", "16").status());
		assertTrue(stock("list", "--low").out().contains("harbour-white"), "4 of 5");
		assertRefused("below zero", stock("set", "harbour-white", "--take", "5"));
		JsonObject changed = json(stock("set", "harbour-white", "--more", "100", "--colour", "white", "--weight", "216gsm", "--json"));
		assertEquals(104, changed.get("onHand").getAsInt());
		assertTrue(changed.get("basisWeight").isJsonNull());
		assertTrue(stock("show", "harbour-white").out().contains("0.45 EUR"));
		assertEquals(changed, json(stock("show", "harbour-white", "--json")));
		assertEquals(0, stock("remove", "harbour-white").status());
		assertRefused("there is no stock “harbour-white”", stock("show", "harbour-white"));
	}

	@Test
	void wrongStockIsRefusedBeforeTheStudioIsTouched() {
		assertRefused("name is missing", stock("add", "--family", "card", "--weight", "200gsm"));
		assertRefused("is no weight", stock("add", "--name", "A", "--family", "card", "--weight", "65 lb"));
		assertRefused("Is 65 lb bond meant?",
				stock("add", "--name", "A", "--family", "card", "--weight", "65 lb cover", "--weight", "244gsm"));
		assertRefused("has no currency", stock("add", "--name", "A", "--family", "card", "--weight", "65gsm", "--price", "3"));
		assertRefused("there are card, paper", stock("add", "--name", "A", "--family", "wool", "--weight", "65gsm"));
		assertFalse(Files.exists(folder.resolve("studio/studio.mv.db")));
	}

	@Test
	void tablesGoInAndOut() throws Exception {
		Path table = Files.writeString(folder.resolve("stock.csv"), """
				name;family;grammage g/m²;caliper mil
				Harbour white;card;216,5;11,5
				Bad;wool;216,5;
				Quay grey;card;300;
				""");
		Answer refused = stock("import", table.toString());
		assertRefused("row 3, column “family”: “wool” is not known here", refused);
		assertEquals(1, refused.err().lines().count(), refused.err());
		assertEquals(0, list().size(), "all or nothing");
		assertEquals(1, stock("import", table.toString(), "--skip-bad").status());
		assertEquals(2, list().size());
		Path out = folder.resolve("out.csv");
		assertEquals(0, stock("export", out.toString()).status());
		assertRefused("there is a stock “harbour-white” already", stock("import", out.toString()));
		assertEquals(0, stock("import", out.toString(), "--replace").status());
		Path again = folder.resolve("again.csv");
		assertEquals(0, stock("export", again.toString()).status());
		assertArrayEquals(Files.readAllBytes(out), Files.readAllBytes(again));
		assertRefused("there is no such file", stock("import", folder.resolve("none.csv").toString()));
	}

	@Test
	void damagedStoreIsNamed() throws Exception {
		assertEquals(0, stock("add", "--from", "generic-card-65lb").status());
		Files.writeString(folder.resolve("studio/studio.mv.db"), "no database ".repeat(999));
		Answer refused = stock("list");
		assertRefused("studio.mv.db” cannot be used: it is damaged", refused);
		assertEquals(1, refused.err().lines().count(), refused.err());
	}

	@Test
	void cataloguesAreThereToChooseFrom() {
		assertTrue(frisket("stock", "catalogue").out().contains("generic-card-65lb"));
		JsonObject added = json(stock("add", "--from", "generic-card-65lb", "--on-hand", "50", "--json"));
		assertEquals(175.77, added.get("grammage").getAsDouble(), 0.005);
		assertRefused("no catalogue has “nothing”", stock("add", "--from", "nothing"));
	}

	/** Goes into bundles of their own. */
	public static final class Season implements StockCatalogue {

		@Override
		public List<Stock> stocks() {
			return List.of(Stock.named("Lantern red").id("season-red").family(StockFamily.PAPER)
					.grammage(new java.math.BigDecimal(90)).build());
		}
	}

	/** Fails at work. */
	public static final class Failing implements StockCatalogue {

		@Override
		public List<Stock> stocks() {
			throw new IllegalStateException("the shelf is empty");
		}
	}

	@Test
	void bundlesBringCataloguesAndOneThatFailsIsToldByItsName() throws Exception {
		Bundle season = install("org.frisket.sample.season", Season.class);
		Bundle failing = install("org.frisket.sample.failing", Failing.class);
		try {
			Answer answer = frisket("stock", "catalogue", "--json");
			assertTrue(answer.err().contains("bundle org.frisket.sample.failing failed: the shelf is empty"), answer.err());
			JsonArray stocks = json(answer).getAsJsonArray("stock");
			List<String> bundles = new ArrayList<>();
			stocks.forEach(each -> bundles.add(each.getAsJsonObject().get("bundle").getAsString()));
			assertTrue(bundles.contains("org.frisket.sample.season") && bundles.contains("org.frisket.material"), answer.out());
			assertEquals(0, stock("add", "--from", "season-red").status());
		} finally {
			season.uninstall();
			failing.uninstall();
		}
		assertFalse(frisket("stock", "catalogue").out().contains("season-red"));
	}

	private Bundle install(String name, Class<?> catalogue) throws Exception {
		Manifest manifest = new Manifest();
		Attributes main = manifest.getMainAttributes();
		main.put(Attributes.Name.MANIFEST_VERSION, "1.0");
		main.putValue("Bundle-ManifestVersion", "2");
		main.putValue("Bundle-SymbolicName", name + ";singleton:=true");
		main.putValue("Bundle-Version", "1.0.0");
		main.putValue("Require-Bundle", "org.frisket.material");
		String file = catalogue.getName().substring(catalogue.getName().lastIndexOf('.') + 1) + ".class";
		Path jar = folder.resolve(name + ".jar");
		try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar), manifest);
				InputStream bytes = StockVerbTest.class.getResourceAsStream(file)) {
			out.putNextEntry(new ZipEntry("plugin.xml"));
			out.write("""
					<?xml version="1.0" encoding="UTF-8"?>
					<?eclipse version="3.4"?>
					<plugin><extension point="org.frisket.material.stockCatalogues">
					<catalogue id="%s.stock" name="Sample" class="%s"/></extension></plugin>
					""".formatted(name, catalogue.getName()).getBytes(StandardCharsets.UTF_8));
			out.putNextEntry(new ZipEntry(catalogue.getPackageName().replace('.', '/') + '/' + file));
			bytes.transferTo(out);
		}
		Bundle bundle = FrameworkUtil.getBundle(StockVerbTest.class).getBundleContext()
				.installBundle(jar.toUri().toString());
		bundle.start();
		return bundle;
	}
}
