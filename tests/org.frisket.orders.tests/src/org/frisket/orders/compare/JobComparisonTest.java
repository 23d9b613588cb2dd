package org.frisket.orders.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Matrix;
import org.frisket.model.OperationKind;
import org.frisket.model.Wording;
import org.frisket.model.impl.FrisketPackageImpl;
import org.frisket.orders.internal.features.FeatureWords;
import org.junit.jupiter.api.Test;

/** What is said of the changes of two desks. */
class JobComparisonTest {

	private static Job job() {
		Job job = Jobs.create("j", "Ferry banner");
		Layer front = Jobs.addLayer(job, "Front");
		Jobs.addOperation(Jobs.addWording(front, "Ferry", 40), OperationKind.CUT);
		Jobs.addOutline(front, "M0 0L1 0L0 1Z");
		Jobs.addLayer(job, "Back");
		return job;
	}

	private static List<String> said(Job mine, Job theirs) throws IOException {
		List<String> said = new ArrayList<>();
		for (Row row : JobComparison.of(job(), mine, theirs).rows()) {
			said.add(row.subject() + " | " + row.mine().kind() + " " + row.mine().words() + " | " + row.theirs().kind() + " "
					+ row.theirs().words() + (row.touches() ? " !" : ""));
		}
		return said;
	}

	@Test
	void changesAreSaidInWords() throws IOException {
		Job mine = job();
		Wording wording = (Wording) Jobs.elements(mine).get(0);
		wording.setText("Ferries");
		wording.setHeight(42);
		wording.setTransform(Matrix.translation(12.5, -3));
		Job theirs = job();
		theirs.getLayers().get(1).setStock("card-300");
		Jobs.addOperation(Jobs.elements(theirs).get(0), OperationKind.CREASE);
		theirs.setQuantity(20);
		theirs.getLayers().get(0).getElements().remove(1);
		assertEquals(List.of("Job | NONE [] | CHANGED [quantity 1 → 20]",
				"Wording “Ferries” | CHANGED [moved by 12.5 mm right, 3 mm up, text “Ferry” → “Ferries”, "
						+ "height 40 mm → 42 mm] | CHANGED [operations cut → cut, crease]",
				"Layer “Back” | NONE [] | CHANGED [stock none → “card-300”]",
				"Outline e2 | NONE [] | REMOVED []"), said(mine, theirs));
	}

	@Test
	void orderAndPlaceAreSaid() throws IOException {
		Job mine = job();
		mine.getLayers().get(1).getElements().add(Jobs.elements(mine).get(0));
		Job theirs = job();
		((EList<Element>) theirs.getLayers().get(0).getElements()).move(0, 1);
		assertEquals(List.of("Layer “Front” | NONE [] | CHANGED [order changed]",
				"Wording “Ferry” | CHANGED [moved to Layer “Back”] | NONE []"), said(mine, theirs));
	}

	@Test
	void equalJobsHaveNothingToSay() throws IOException {
		assertEquals(List.of(), said(job(), job()));
	}

	@Test
	void nothingIsChangedByLooking() throws IOException {
		Job job = job();
		byte[] before = JobFile.toBytes(job);
		JobComparison.of(job, job, job).rows();
		org.junit.jupiter.api.Assertions.assertArrayEquals(before, JobFile.toBytes(job));
	}

	/** A feature that is new in the model is compared without more code, but ought to get a word. */
	@Test
	void everyFeatureAndEveryValueHasAWord() {
		Set<String> within = Set.of("StageChange", "Operation", "TextSpan", "Nudge", "Bar", "Bridge", "IslandBridges",
				"BridgeAngle", "FontRef", "Laying", "Guide", "Guest");
		FeatureWords words = FeatureWords.in(Locale.ENGLISH);
		List<String> missing = new ArrayList<>();
		for (EClassifier classifier : FrisketPackageImpl.eINSTANCE.getEClassifiers()) {
			if (classifier instanceof EClass type && !within.contains(type.getName())) {
				for (EStructuralFeature feature : type.getEStructuralFeatures()) {
					boolean told = !Snapshot.holdsNodes(feature) && !(type.getName().equals("Placement"));
					if (told && !words.knows(feature.getName())) {
						missing.add(feature.getName());
					}
					if (told && feature instanceof EAttribute attribute && attribute.getEAttributeType() instanceof EEnum values) {
						values.getELiterals().stream().map(each -> values.getName() + "." + each.getLiteral())
								.filter(each -> !words.knows(each)).forEach(missing::add);
					}
				}
			}
		}
		assertEquals(List.of(), missing);
		assertTrue(words.knows("OperationKind.kissCut"));
		assertFalse(words.knows("flourishes"));
		assertEquals("flourishes", words.feature("flourishes"));
		assertEquals("Text", FeatureWords.in(Locale.GERMAN).feature("text"));
	}
}
