package org.frisket.model.internal;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.impl.EPackageRegistryImpl;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.impl.ExtensibleURIConverterImpl;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.xmi.XMLLoad;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.eclipse.emf.ecore.xmi.impl.XMILoadImpl;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceImpl;
import org.frisket.model.Job;
import org.frisket.model.impl.FrisketPackageImpl;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;

/**
 * Holds one job, and with it what the file said beyond what this version knows. It stands alone: it knows the job's
 * package only, and reaches no other file and no network, whatever a file says.
 */
final class JobResource extends XMIResourceImpl {

	private static final Map<String, Object> LOAD = Map.of(
			XMLResource.OPTION_RECORD_UNKNOWN_FEATURE, true,
			XMLResource.OPTION_DEFER_IDREF_RESOLUTION, true,
			XMLResource.OPTION_USE_PACKAGE_NS_URI_AS_LOCATION, false);
	private static final Map<String, Object> SAVE = Map.of(
			XMLResource.OPTION_ENCODING, "UTF-8",
			Resource.OPTION_LINE_DELIMITER, "\n");

	private XMLReader reader;

	JobResource() {
		super(URI.createURI("frisket:/job"));
		setIntrinsicIDToEObjectMap(new HashMap<>());
		ResourceSet alone = new ResourceSetImpl();
		EPackage.Registry packages = new EPackageRegistryImpl(new EPackageRegistryImpl());
		packages.put(FrisketPackageImpl.eNS_URI, FrisketPackageImpl.eINSTANCE);
		alone.setPackageRegistry(packages);
		alone.setURIConverter(new ExtensibleURIConverterImpl(List.of(), List.of()));
		alone.getResources().add(this);
	}

	/** Reads a job through the reader given, which has parser and filters in it. */
	void read(byte[] content, XMLReader through) throws IOException {
		reader = through;
		try {
			load(new InputSource(new ByteArrayInputStream(content)), LOAD);
		} finally {
			reader = null;
		}
	}

	byte[] write() throws IOException {
		ByteArrayOutputStream bytes = new ByteArrayOutputStream();
		save(bytes, SAVE);
		return bytes.toByteArray();
	}

	Job job() {
		return (Job) getContents().get(0);
	}

	@Override
	protected XMLLoad createXMLLoad() {
		return new XMILoadImpl(createXMLHelper()) {

			@Override
			protected SAXParser makeParser() throws ParserConfigurationException, SAXException {
				return new ReaderParser(reader);
			}
		};
	}
}
