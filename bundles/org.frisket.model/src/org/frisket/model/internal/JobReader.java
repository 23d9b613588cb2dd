package org.frisket.model.internal;

import java.io.IOException;
import java.io.InputStream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.util.InternalEList;
import org.frisket.model.Element;
import org.frisket.model.Ids;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.UnreadableJobException;
import org.frisket.model.WholeFile;
import org.frisket.model.Wording;
import org.frisket.model.migration.Migration;
import org.frisket.model.migration.Migrations;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.XMLFilterImpl;

/** Reads one job file: bounds, version, migrations, model, and the reason if that fails. */
public final class JobReader {

	/** Bytes. A job refers to pictures and fonts and does not hold them; even a detailed outline is a few MB. */
	public static final int LARGEST = 128 << 20;

	private final String file;
	private final byte[] content;

	private JobReader(String file, byte[] content) {
		this.file = file;
		this.content = content;
	}

	/** Reads to the end of the stream and leaves it open. */
	public static Job read(InputStream in, String file) throws UnreadableJobException {
		byte[] content;
		try {
			content = in.readNBytes(LARGEST + 1);
		} catch (IOException e) {
			throw new UnreadableJobException(file, 0, 0, "it cannot be read: " + WholeFile.reason(e), e);
		}
		return new JobReader(file, content).read();
	}

	private Job read() throws UnreadableJobException {
		if (content.length == 0) {
			throw new UnreadableJobException(file, 0, 0, "the file is empty", null);
		}
		if (content.length > LARGEST) {
			throw new UnreadableJobException(file, 0, 0,
					"it is larger than " + (LARGEST >> 20) + " MB, too large for a job", null);
		}
		JobResource resource = new JobResource();
		JobGate gate = new JobGate();
		try {
			gate.setParent(upToDate(RootCheck.version(content)));
			resource.read(content, gate);
		} catch (SAXException | IOException | RuntimeException e) {
			// EMF reports what it notices and goes on; the first thing noticed is the cause of the others.
			Exception first = resource.getErrors().isEmpty() ? e : exception(resource.getErrors().get(0), e);
			throw ReadingTrouble.explain(file, content, gate, first);
		}
		if (resource.getContents().size() != 1 || !(resource.getContents().get(0) instanceof Job job)) {
			throw new UnreadableJobException(file, 0, 0, "it does not hold one job", null);
		}
		refuseOutside(job, gate);
		Ids.complete(job);
		return job;
	}

	/** A parser that shows a file of the version given as if it were of the current one. */
	private static XMLReader upToDate(int version) {
		XMLReader reader = Xml.reader();
		if (version < Migrations.currentVersion()) {
			reader = behind(reader, Xml.renamespace("urn:frisket:job:" + version));
			for (Migration migration : Migrations.since(version)) {
				reader = behind(reader, migration.filter());
			}
		}
		return reader;
	}

	private static XMLReader behind(XMLReader reader, XMLFilterImpl filter) {
		filter.setParent(reader);
		return filter;
	}

	private static Exception exception(Resource.Diagnostic diagnostic, Exception otherwise) {
		return diagnostic instanceof Exception exception ? exception : otherwise;
	}

	/** References of the form {@code file#id} come out of the parser as proxies. */
	private void refuseOutside(Job job, JobGate gate) throws UnreadableJobException {
		for (Element element : Jobs.elements(job)) {
			if (Jobs.isFollower(element)) {
				for (EObject source : ((InternalEList<? extends EObject>) Jobs.sources(element)).basicList()) {
					if (source.eIsProxy() || source.eResource() != job.eResource()) {
						throw new UnreadableJobException(file, gate.lineOf(element.getId()), 0,
								"the " + Jobs.word(element) + " '" + element.getId()
										+ "' refers to something outside the file", null);
					}
				}
			}
			if (element instanceof Wording wording && wording.getPath() != null
					&& (wording.getPath().eIsProxy() || wording.getPath().eResource() != job.eResource())) {
				throw new UnreadableJobException(file, gate.lineOf(element.getId()), 0,
						"the wording '" + element.getId() + "' refers to something outside the file", null);
			}
		}
	}
}
