package org.frisket.export.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.frisket.testkit.SampleJobs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;

/** The rules of processing steps, as qpdf sees the file. */
class StepsTest {

	/** Groups and types of ISO 19593-1:2018, tables 2 and 3, as far as this project writes them. */
	private static final Map<OperationKind, String> TYPES = Map.of(OperationKind.CUT, "/Cutting", OperationKind.KISS_CUT,
			"/PartialCutting", OperationKind.CREASE, "/Creasing", OperationKind.PERFORATE, "/Perforating");
	private static final Set<String> WITH_TYPE = Set.of("/Structural", "/Positions");

	@TempDir
	private Path folder;

	/** A square for each operation, side by side on one layer; in {@code count} layers above each other. */
	private static Job everything(int count) {
		Job job = Jobs.create("job", "Place cards");
		for (int i = 0; i < count; i++) {
			Layer layer = Jobs.addLayer(job, "Card " + (i + 1));
			layer.setColour("#1d6f78");
			for (OperationKind kind : OperationKind.values()) {
				int x = 20 * kind.ordinal();
				Jobs.addOperation(Jobs.addOutline(layer, "M" + x + " " + 20 * i + "h10v10h-10z"), kind);
			}
		}
		return job;
	}

	private Qpdf read(Job job, Map<String, String> options) throws Exception {
		return Qpdf.read(PdfExporterTest.written(job, options), folder);
	}

	private static Map<String, JsonObject> named(Qpdf pdf) {
		Map<String, JsonObject> named = new HashMap<>();
		pdf.groups().forEach(group -> assertNull(named.put(Qpdf.name(group), group), "names are unique"));
		return named;
	}

	@Test
	void eachOperationHasAGroupThatSaysWhatItIs() throws Exception {
		Qpdf pdf = read(everything(1), Map.of("label", "with"));
		Map<String, JsonObject> groups = named(pdf);
		for (OperationKind kind : OperationKind.values()) {
			JsonElement metadata = groups.get(Step.of(kind).name()).get("/GTS_Metadata");
			if (TYPES.containsKey(kind)) {
				assertEquals("/Structural", pdf.below(metadata, "/GTS_ProcStepsGroup").getAsString());
				assertEquals(TYPES.get(kind), pdf.below(metadata, "/GTS_ProcStepsType").getAsString());
			} else {
				assertNull(metadata, kind + " is no step of the standard");
			}
		}
		assertEquals(OperationKind.values().length + 1, groups.size());
	}

	@Test
	void allGroupsAreNamedListedAndTypedAsTheStandardSays() throws Exception {
		for (Job job : List.of(everything(1), everything(3), SampleJobs.giftTag())) {
			Qpdf pdf = read(job, Map.of("label", "with"));
			Set<String> names = new HashSet<>();
			for (JsonObject group : pdf.groups()) {
				assertEquals("/OCG", group.get("/Type").getAsString());
				assertFalse(Qpdf.name(group).isBlank());
				names.add(Qpdf.name(group));
				JsonElement metadata = group.get("/GTS_Metadata");
				if (metadata != null) {
					String of = pdf.below(metadata, "/GTS_ProcStepsGroup").getAsString();
					assertEquals(WITH_TYPE.contains(of), pdf.below(metadata, "/GTS_ProcStepsType") != null, of);
				}
			}
			assertEquals(names, new HashSet<>(pdf.listed()));
			assertEquals(names.size(), pdf.listed().size());
			assertEquals(names.size(), pdf.at("/Root", "/OCProperties", "/D", "/ON").getAsJsonArray().size());
		}
	}

	@Test
	void stepsAreStrokedInASeparationOfTheirOwnThatOverprints() throws Exception {
		Qpdf pdf = read(everything(1), Map.of());
		List<Painted> painted = Painted.of(pdf.content());
		assertEquals(OperationKind.values().length, painted.size());
		Set<String> colorants = new HashSet<>();
		for (Painted path : painted) {
			String group = Qpdf.name(pdf.page("/Resources", "/Properties", path.groups().get(0)).getAsJsonObject());
			if (group.equals(Step.of(OperationKind.PRINT).name())) {
				assertEquals("f", path.operator());
				assertEquals(0, painted.indexOf(path), "below all that a machine does");
				assertEquals("", path.state(), "what is printed knocks out what is below it");
				continue;
			}
			assertEquals("S", path.operator(), group);
			JsonElement space = pdf.page("/Resources", "/ColorSpace", path.space());
			assertEquals("/Separation", pdf.below(space, "0").getAsString(), group);
			assertTrue(colorants.add(pdf.below(space, "1").getAsString()), group);
			JsonElement state = pdf.page("/Resources", "/ExtGState", path.state());
			assertTrue(pdf.below(state, "/OP").getAsBoolean() && pdf.below(state, "/op").getAsBoolean(), group);
			assertEquals(1, pdf.below(state, "/OPM").getAsInt(), group);
			for (String transparent : List.of("/CA", "/ca", "/SMask", "/BM")) {
				assertNull(pdf.below(state, transparent), group);
			}
		}
		assertEquals(Set.of("/cut", "/kiss-cut", "/crease", "/perforate", "/draw"), colorants);
	}

	@Test
	void fullToneOfASeparationIsTheHueOfItsOperation() throws Exception {
		Qpdf pdf = read(SampleJobs.outline("M0 0H10V10H0Z", OperationKind.CUT), Map.of());
		JsonElement space = pdf.page("/Resources", "/ColorSpace", Painted.of(pdf.content()).get(0).space());
		assertEquals("/DeviceCMYK", pdf.below(space, "2").getAsString());
		List<Double> full = Qpdf.numbers(pdf.below(space, "3", "/C1"));
		assertEquals(List.of(0.0, 0.0, 0.0, 0.0), Qpdf.numbers(pdf.below(space, "3", "/C0")));
		// red, green and blue of a plain mixture: (1 - ink) (1 - black)
		double[] teal = { 0x0b / 255.0, 0x5f / 255.0, 0x62 / 255.0 };
		for (int i = 0; i < teal.length; i++) {
			assertEquals(teal[i], (1 - full.get(i)) * (1 - full.get(3)), 0.01);
		}
	}

	@Test
	void layersAreGroupsInsideTheirSteps() throws Exception {
		Qpdf pdf = read(everything(2), Map.of());
		Set<String> pairs = new HashSet<>();
		for (Painted path : Painted.of(pdf.content())) {
			assertEquals(2, path.groups().size());
			JsonObject inner = pdf.page("/Resources", "/Properties", path.groups().get(1)).getAsJsonObject();
			assertNull(inner.get("/GTS_Metadata"));
			pairs.add(path.groups().get(0) + Qpdf.name(inner));
		}
		assertEquals(2 * OperationKind.values().length, pairs.size());
		assertTrue(Painted.of(read(everything(1), Map.of()).content()).stream().allMatch(path -> path.groups().size() == 1),
				"one layer is not told from others");
	}

	@Test
	void hiddenLayersAndArtworkThatIsNotWantedAreLeftOut() throws Exception {
		Job job = everything(2);
		job.getLayers().get(0).setVisible(false);
		Qpdf pdf = read(job, Map.of("artwork", "without"));
		Map<String, JsonObject> groups = named(pdf);
		assertFalse(groups.containsKey("Card 1"), groups.keySet().toString());
		assertFalse(groups.containsKey(Step.of(OperationKind.PRINT).name()), groups.keySet().toString());
		assertEquals(OperationKind.values().length - 1, Painted.of(pdf.content()).size());
	}

	@Test
	void whatIsAskedForTwiceIsDrawnOnce() throws Exception {
		Job job = SampleJobs.outline("M0 0H10V10H0Z", OperationKind.CUT);
		Jobs.addOperation(Jobs.elements(job).get(0), OperationKind.CUT);
		assertEquals(1, Painted.of(read(job, Map.of()).content()).size());
	}

	@Test
	void dashesAreGeometry() throws Exception {
		Job job = SampleJobs.outline("M0 0V10H10V0Z", OperationKind.PERFORATE);
		assertEquals(1, Painted.of(read(job, Map.of()).content()).get(0).subpaths(), "left whole");
		Operation operation = Jobs.elements(job).get(0).getOperations().get(0);
		operation.setDash(3);
		operation.setGap(2);
		Painted dashed = Painted.of(read(job, Map.of()).content()).get(0);
		// two to a side, of which one lies over each corner
		assertEquals(8, dashed.subpaths());
		assertEquals(0, dashed.closed());
	}

	@Test
	void emptyJobIsAPageWithoutGroups() throws Exception {
		Qpdf pdf = read(Jobs.create("job", "Nothing yet"), Map.of("margin", "0mm"));
		assertTrue(pdf.groups().isEmpty());
		// ISO 32000-1, annex C.2: no page is smaller
		assertEquals(List.of(0.0, 0.0, 3.0, 3.0), Qpdf.numbers(pdf.page("/MediaBox")));
	}
}
