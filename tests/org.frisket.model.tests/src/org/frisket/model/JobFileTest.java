package org.frisket.model;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.model.impl.FrisketPackageImpl;
import org.junit.jupiter.api.Test;

class JobFileTest {

	private static String text(Job job) throws IOException {
		return new String(JobFile.toBytes(job), StandardCharsets.UTF_8);
	}

	private static Job load(String text) throws IOException {
		return JobFile.load(text.getBytes(StandardCharsets.UTF_8), "a.frjob");
	}

	private static final String ROOT = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
			+ "<frisket:Job xmi:version=\"2.0\" xmlns:xmi=\"http://www.omg.org/XMI\""
			+ " xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\" xmlns:frisket=\"urn:frisket:job:1\"";

	@Test
	void everythingComesBackAsItWas() throws IOException {
		Job job = Samples.banner();
		byte[] bytes = JobFile.toBytes(job);
		Job read = JobFile.load(new ByteArrayInputStream(bytes), "banner");
		assertTrue(EcoreUtil.equals(job, read));
		assertArrayEquals(bytes, JobFile.toBytes(read));
	}

	/** Otherwise a new feature could be forgotten by the test above. */
	@Test
	void sampleUsesEveryFeature() {
		Job job = Samples.banner();
		List<EObject> parts = new ArrayList<>(List.of(job));
		job.eAllContents().forEachRemaining(parts::add);
		for (EClassifier classifier : FrisketPackageImpl.eINSTANCE.getEClassifiers()) {
			if (classifier instanceof EClass type) {
				for (EStructuralFeature feature : type.getEStructuralFeatures()) {
					assertTrue(parts.stream().anyMatch(part -> type.isInstance(part) && part.eIsSet(feature)),
							() -> type.getName() + "." + feature.getName());
				}
			}
		}
	}

	@Test
	void defaultsAreNotWritten() throws IOException {
		Job job = Jobs.create("j", "Gift tags");
		Jobs.addOutline(Jobs.addLayer(job, "Tags"), "M0 0");
		assertEquals(ROOT + """
				 id="j" title="Gift tags">
				  <layers id="l1" name="Tags">
				    <elements xsi:type="frisket:Outline" id="e1" pathData="M0 0"/>
				  </layers>
				</frisket:Job>
				""", text(job));
	}

	@Test
	void eachElementStandsOnOneLine() throws IOException {
		String text = text(Samples.banner());
		// what holds text ends on the line on which it begins
		long tags = text.replaceAll("(?<=[^\\s>])</\\w+>", "").chars().filter(c -> c == '<').count();
		assertEquals(tags, text.lines().count());
		assertFalse(text.contains("\r"));
		assertTrue(text.endsWith(">\n"));
	}

	@Test
	void referencesAreIds() throws IOException {
		assertTrue(text(Samples.banner()).contains("behind=\"e1 e2\""));
	}

	@Test
	void numbersAreWrittenBriefly() throws IOException {
		String text = text(Samples.banner());
		assertTrue(text.contains("transform=\"0.1 0.2 -0.30000000000000004 1E-9 12.5 -0.3333333333333333\""), text);
		assertTrue(text.contains("height=\"40\""), text);
	}

	@Test
	void sameStepsMakeSameBytes() throws IOException {
		assertArrayEquals(JobFile.toBytes(Samples.banner()), JobFile.toBytes(Samples.banner()));
	}

	@Test
	void writingLeavesTheJobAsItIs() throws IOException {
		Job job = Samples.banner();
		JobFile.toBytes(job);
		assertNull(job.eResource());
	}

	@Test
	void randomNumbersComeBackExactly() throws IOException {
		Random random = new Random(7);
		Job job = Jobs.create("j", null);
		Layer layer = Jobs.addLayer(job, null);
		for (int i = 0; i < 500; i++) {
			double value;
			do {
				value = Double.longBitsToDouble(random.nextLong());
			} while (!Double.isFinite(value));
			Mat mat = Jobs.addMat(layer, value, List.of());
			mat.setTransform(new Matrix(value, 0, 0, random.nextGaussian(), random.nextDouble() * 300,
					random.nextFloat()));
		}
		Job read = JobFile.load(JobFile.toBytes(job), "numbers");
		assertTrue(EcoreUtil.equals(job, read));
	}

	@Test
	void unknownAttributesAreKept() throws IOException {
		String text = ROOT + """
				 id="j" title="Tags" rush="very &amp; soon">
				  <layers id="l1" name="Tags">
				    <elements xsi:type="frisket:Wording" id="e1" text="A" height="12" slant="9.5"/>
				  </layers>
				</frisket:Job>
				""";
		assertEquals(text, text(load(text)));
	}

	@Test
	void unknownElementsAreKept() throws IOException {
		String text = ROOT + """
				 id="j" title="Tags">
				  <layers id="l1" name="Tags"/>
				  <sheets id="s1" width="210">
				    <placements element="e1">
				      <at x="1"/>
				    </placements>
				    <placements element="e2"/>
				  </sheets>
				</frisket:Job>
				""";
		String once = text(load(text));
		// The declaration of xsi goes, as nothing is left that uses it.
		assertEquals(text.replace(" xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\"", ""), once);
		assertEquals(once, text(load(once)));
	}

	@Test
	void unknownElementsWithTypesAreKept() throws IOException {
		String text = ROOT + """
				 id="j" title="Tags">
				  <sheets xsi:type="frisket:Roll" id="s1">
				    <marks xsi:type="frisket:Cross" x="1"/>
				  </sheets>
				</frisket:Job>
				""";
		assertEquals(text, text(load(text)));
	}

	@Test
	void unknownDataSurvivesAnEdit() throws IOException {
		Job job = load(ROOT + " id=\"j\" title=\"Tags\" rush=\"very\"/>\n");
		job.setTitle("Place cards");
		assertTrue(text(job).contains("title=\"Place cards\" rush=\"very\""), text(job));
	}

	@Test
	void missingIdsAreGiven() throws IOException {
		Job job = load(ROOT + """
				>
				  <layers>
				    <elements xsi:type="frisket:Outline"/>
				    <elements xsi:type="frisket:Outline" id="e4"/>
				    <elements xsi:type="frisket:Mat" behind="//@layers.0/@elements.0"/>
				  </layers>
				</frisket:Job>
				""");
		Layer layer = job.getLayers().get(0);
		assertEquals("l1", layer.getId());
		assertEquals(List.of("e5", "e4", "e6"), layer.getElements().stream().map(Element::getId).toList());
		assertSame(layer.getElements().get(0), ((Mat) layer.getElements().get(2)).getBehind().get(0));
	}

	@Test
	void ringsOfMatsAreRead() throws IOException {
		Job job = load(ROOT + """
				 id="j">
				  <layers id="l1">
				    <elements xsi:type="frisket:Mat" id="e1" behind="e2"/>
				    <elements xsi:type="frisket:Mat" id="e2" behind="e1"/>
				  </layers>
				</frisket:Job>
				""");
		Mat first = (Mat) job.getLayers().get(0).getElements().get(0);
		assertSame(first, ((Mat) first.getBehind().get(0)).getBehind().get(0));
	}

	@Test
	void whatCannotBeReadIsNotWritten() {
		Job letters = Samples.banner();
		((Wording) Jobs.element(letters, "e1").orElseThrow()).setText("a\u0007b");
		assertEquals("the text of 'e1' holds the character U+0007, which cannot be written",
				assertThrows(UnwritableJobException.class, () -> JobFile.toBytes(letters)).getMessage());

		Job halfLetter = Samples.banner();
		halfLetter.setNotes("\uD83D");
		assertThrows(UnwritableJobException.class, () -> JobFile.toBytes(halfLetter));

		Job twice = Samples.banner();
		twice.getLayers().get(0).setId("e1");
		assertEquals("the id 'e1' is given twice",
				assertThrows(UnwritableJobException.class, () -> JobFile.toBytes(twice)).getMessage());

		Job blank = Samples.banner();
		blank.getLayers().get(0).setId("my layer");
		assertThrows(UnwritableJobException.class, () -> JobFile.toBytes(blank));

		Job stray = Samples.banner();
		EcoreUtil.remove(Jobs.element(stray, "e2").orElseThrow());
		assertEquals("the wording 'e1' runs along 'e2', which is not in the job",
				assertThrows(UnwritableJobException.class, () -> JobFile.toBytes(stray)).getMessage());
		((Wording) Jobs.element(stray, "e1").orElseThrow()).setPath(null);
		assertEquals("the mat 'e3' stands behind 'e2', which is not in the job",
				assertThrows(UnwritableJobException.class, () -> JobFile.toBytes(stray)).getMessage());
	}
}
