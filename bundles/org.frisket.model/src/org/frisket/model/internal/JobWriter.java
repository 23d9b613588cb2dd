package org.frisket.model.internal;

import java.io.IOException;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.model.Element;
import org.frisket.model.Ids;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.Wording;

/** Turns a job into the bytes of its file. Writes nothing that {@link JobReader} would not take back. */
public final class JobWriter {

	private JobWriter() {
	}

	/** @throws IOException with the reason in plain words as its message */
	public static byte[] bytes(Job job) throws IOException {
		checkIds(job);
		checkReferences(job);
		checkText(job);
		return resource(job).write();
	}

	/** The resource a job was read into also holds what this version does not know; a new job has none. */
	private static JobResource resource(Job job) {
		if (job.eResource() instanceof JobResource resource) {
			return resource;
		}
		JobResource resource = new JobResource();
		resource.getContents().add(EcoreUtil.copy(job));
		return resource;
	}

	private static void checkIds(Job job) throws IOException {
		Set<String> seen = new HashSet<>();
		checkId(job.getId(), seen);
		for (Layer layer : job.getLayers()) {
			checkId(layer.getId(), seen);
			for (Element element : layer.getElements()) {
				checkId(element.getId(), seen);
			}
		}
	}

	private static void checkId(String id, Set<String> seen) throws IOException {
		if (id == null) {
			return;
		}
		if (!Ids.valid(id)) {
			throw new IOException("'" + id + "' cannot be an id");
		}
		if (!seen.add(id)) {
			throw new IOException("the id '" + id + "' is given twice");
		}
	}

	private static void checkReferences(Job job) throws IOException {
		for (Element element : Jobs.elements(job)) {
			for (Element source : Jobs.sources(element)) {
				if (Jobs.jobOf(source) != job) {
					throw new IOException("the " + Jobs.word(element) + " '" + element.getId()
							+ (element instanceof Mat ? "' stands behind '" : "' is made from '")
							+ source.getId() + "', which is not in the job");
				}
			}
			if (element instanceof Wording wording && wording.getPath() != null
					&& Jobs.jobOf(wording.getPath()) != job) {
				throw new IOException("the wording '" + wording.getId() + "' runs along '" + wording.getPath().getId()
						+ "', which is not in the job");
			}
		}
	}

	private static void checkText(Job job) throws IOException {
		checkText((EObject) job);
		for (Iterator<EObject> all = job.eAllContents(); all.hasNext();) {
			checkText(all.next());
		}
	}

	private static void checkText(EObject part) throws IOException {
		List<EAttribute> attributes = part.eClass().getEAllAttributes();
		for (EAttribute attribute : attributes) {
			if (part.eGet(attribute) instanceof String text) {
				int bad = text.codePoints().filter(c -> !writable(c)).findFirst().orElse(-1);
				if (bad >= 0) {
					throw new IOException(
							String.format("the %s of '%s' holds the character U+%04X, which cannot be written",
									attribute.getName(), EcoreUtil.getID(part), bad));
				}
			}
		}
	}

	/** The characters of XML 1.0. */
	private static boolean writable(int c) {
		return c >= 0x20 && c <= 0xD7FF || c == '\t' || c == '\n' || c == '\r' || c >= 0xE000 && c <= 0xFFFD
				|| c >= 0x10000;
	}
}
