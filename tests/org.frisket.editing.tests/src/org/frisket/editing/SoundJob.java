package org.frisket.editing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.HashSet;
import java.util.Iterator;
import java.util.Set;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.model.Element;
import org.frisket.model.Group;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Matrix;

/** What is true of every job, whatever was done to it. */
final class SoundJob {

	private SoundJob() {
	}

	/**
	 * Ids are there and tell apart, references lead to what is in the job, places are numbers, and a group holds two
	 * things at least, and nothing that another one holds.
	 */
	static void check(Job job, String after) {
		Set<String> ids = new HashSet<>();
		Set<Element> grouped = new HashSet<>();
		for (Iterator<EObject> all = job.eAllContents(); all.hasNext();) {
			EObject each = all.next();
			EAttribute id = each.eClass().getEIDAttribute();
			if (id != null) {
				assertNotNull(each.eGet(id), after + ": no id of " + each);
				assertTrue(ids.add((String) each.eGet(id)), after + ": two of id " + each.eGet(id));
			}
			for (EObject other : each.eCrossReferences()) {
				assertSame(job, EcoreUtil.getRootContainer(other), after + ": " + each + " leads out of the job to " + other);
			}
			if (each instanceof Element element) {
				Matrix m = element.getTransform();
				assertTrue(Double.isFinite(m.a() + m.b() + m.c() + m.d() + m.e() + m.f()), after + ": " + m);
				assertNotNull(Jobs.layerOf(element), after);
			}
			if (each instanceof Group group) {
				assertTrue(group.getElements().size() + group.getGroups().size() > 1, after + ": no group: " + group);
				group.getElements().forEach(element -> assertTrue(grouped.add(element), after + ": in two groups: " + element));
			}
		}
	}

	/** Written, read and written again it is the same to the byte. */
	static void checkRoundTrip(Job job, String after) throws IOException {
		byte[] bytes = JobFile.toBytes(job);
		assertArrayEquals(bytes, JobFile.toBytes(JobFile.load(bytes, "monkey")), after);
	}
}
