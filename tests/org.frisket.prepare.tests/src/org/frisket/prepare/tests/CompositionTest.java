package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;

import org.frisket.model.Alignment;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.prepare.Composition;
import org.frisket.testkit.SampleJobs;
import org.junit.jupiter.api.Test;

class CompositionTest {

	private static Job job(String text, List<Double> mats, OperationKind kind) {
		return new Composition(text, SampleJobs.face("Liberation Sans"), 20, Alignment.LEFT, OptionalDouble.empty(),
				mats, kind).toJob();
	}

	@Test
	void widestMatIsAtTheBackWhateverTheOrderAskedFor() {
		assertEquals(List.of("Mat 6 mm", "Mat 3 mm", "Wording"),
				job("Ahoy", List.of(3.0, 6.0), OperationKind.CUT).getLayers().stream().map(Layer::getName).toList());
		assertArrayEquals(
				job("Ahoy", List.of(3.0, 6.0), OperationKind.CUT).getLayers().stream().map(Layer::getColour).toArray(),
				job("Ahoy", List.of(6.0, 3.0), OperationKind.CUT).getLayers().stream().map(Layer::getColour).toArray());
	}

	@Test
	void everyPartHasTheOneOperation() {
		Jobs.elements(job("Ahoy", List.of(3.0), OperationKind.DRAW)).forEach(element -> assertEquals(
				List.of(OperationKind.DRAW), element.getOperations().stream().map(o -> o.getKind()).toList()));
	}

	@Test
	void sameCompositionIsTheSameFile() throws Exception {
		assertArrayEquals(JobFile.toBytes(job("Ahoy", List.of(3.0), OperationKind.CUT)),
				JobFile.toBytes(job("Ahoy", List.of(3.0), OperationKind.CUT)));
	}

	@Test
	void titleIsTheFirstLineWithWords() {
		assertEquals("Harbour Lane", job("\n Harbour Lane \nPaperworks", List.of(), OperationKind.CUT).getTitle());
		assertEquals(59, job("x".repeat(59) + "\uD83D\uDEA2", List.of(), OperationKind.CUT).getTitle().length(),
				"a character is not cut in half");
	}
}
