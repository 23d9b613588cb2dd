package org.frisket.export.pdf;

import java.io.ByteArrayInputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.eclipse.osgi.util.NLS;
import org.frisket.export.Handoff;
import org.frisket.model.ImageBytes;
import org.frisket.model.Job;
import org.frisket.model.Layer;
import org.frisket.prepare.pictures.PictureFile;
import org.frisket.print.picture.PictureFormat;

/**
 * One document with its pages, its groups and what describes it. No clock is asked and nothing is left to chance: the same
 * content makes the same bytes.
 */
public final class PdfFile implements AutoCloseable {

	private static final String CREATOR = "Frisket";

	private final PDDocument document = new PDDocument();
	private final Map<Step, PDOptionalContentGroup> steps = new LinkedHashMap<>();
	private final Map<Layer, PDOptionalContentGroup> layers = new LinkedHashMap<>();
	private final Map<ImageBytes, PDImageXObject> images = new LinkedHashMap<>();
	private final PictureObjects pictures = new PictureObjects(this);

	public PdfFile() {
		document.getDocument().setVersion(1.7f);
		document.getDocumentCatalog().setVersion("1.7");
	}

	PdfFile(PageFrame frame) {
		this();
		addPage(frame);
	}

	/** All boxes but that of what is cut off are the whole page. */
	public PDPage addPage(PageFrame frame) {
		PDPage page = new PDPage(frame.mediaBox());
		page.setCropBox(frame.mediaBox());
		page.setBleedBox(frame.mediaBox());
		page.setTrimBox(frame.hasTrim() ? frame.trimBox() : frame.mediaBox());
		if (frame.units() > 1) {
			page.setUserUnit(frame.units());
		}
		document.addPage(page);
		return page;
	}

	public PDDocument document() {
		return document;
	}

	PDPage page() {
		return document.getPage(0);
	}

	/** The group of a step; it is there from the first time it is asked for. */
	public PDOptionalContentGroup group(Step step) {
		return steps.computeIfAbsent(step, key -> {
			PDOptionalContentGroup group = new PDOptionalContentGroup(step.name());
			step.standard().ifPresent(standard -> {
				COSDictionary metadata = new COSDictionary();
				metadata.setItem("GTS_ProcStepsGroup", COSName.getPDFName(standard.group()));
				standard.type().ifPresent(type -> metadata.setItem("GTS_ProcStepsType", COSName.getPDFName(type)));
				metadata.setDirect(true);
				group.getCOSObject().setItem("GTS_Metadata", metadata);
			});
			return group;
		});
	}

	/** The group that shows and hides a layer, whatever is done on it. */
	PDOptionalContentGroup group(Layer layer) {
		return layers.computeIfAbsent(layer,
				key -> new PDOptionalContentGroup(layer.getName() == null ? layer.getId() : layer.getName()));
	}

	/** Pictures of all kinds. */
	public PictureObjects pictures() {
		return pictures;
	}

	/** Pixels as they are in their file: what JPEG has thrown away already is all that is lost. Copies share them. */
	PDImageXObject image(ImageBytes bytes) throws IOException {
		PDImageXObject image = images.get(bytes);
		if (image == null) {
			image = embedded(bytes);
			images.put(bytes, image);
		}
		return image;
	}

	private PDImageXObject embedded(ImageBytes bytes) throws IOException {
		PictureFile file = PictureFile.of(bytes);
		// of a GIF the library would take the first frame without the canvas that it lies on
		if (file.isUpright() && file.format() != PictureFormat.GIF) {
			try (InputStream in = bytes.open()) {
				return PDImageXObject.createFromByteArray(document, in.readAllBytes(), null);
			} catch (IOException | RuntimeException damaged) {
				// as much of it as the job shows
			}
		}
		return LosslessFactory.createFromImage(document, file.decode(Integer.MAX_VALUE).image());
	}

	void write(Handoff handoff, OutputStream out) throws IOException {
		Job job = handoff.job().job();
		write(job.getTitle() == null ? "" : job.getTitle(),
				job.getNumber() == null ? "" : NLS.bind(Messages.PdfFile_subject, job.getNumber()), out);
	}

	/** After this nothing can be added. @param title empty for none @param subject empty for none */
	public void write(String title, String subject, OutputStream out) throws IOException {
		byte[] digest = digest();
		describe(title, subject, digest);
		PDDocumentCatalog catalog = document.getDocumentCatalog();
		if (!steps.isEmpty()) {
			catalog.setOCProperties(groups());
		}
		PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
		// a page that is fitted to the paper is no longer in its size
		preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
		preferences.setDisplayDocTitle(true);
		catalog.setViewerPreferences(preferences);
		document.setDocumentId(ByteBuffer.wrap(digest).getLong());
		// objects one by one: programs of machines know little of later ways to pack them
		document.save(new KeptOpen(out), CompressParameters.NO_COMPRESSION);
	}

	private void describe(String title, String subject, byte[] digest) throws IOException {
		PDDocumentInformation information = document.getDocumentInformation();
		if (!title.isEmpty()) {
			information.setTitle(title);
		}
		if (!subject.isEmpty()) {
			information.setSubject(subject);
		}
		information.setCreator(CREATOR);
		information.setTrapped("False");
		PDMetadata metadata = new PDMetadata(document, new ByteArrayInputStream(
				XmpPacket.of(title, subject, CREATOR, digest)));
		document.getDocumentCatalog().setMetadata(metadata);
	}

	/** All groups are on and can be switched by the reader: layers together, below what is done. */
	private PDOptionalContentProperties groups() {
		COSArray all = new COSArray();
		COSArray order = new COSArray();
		steps.values().forEach(group -> {
			all.add(group.getCOSObject());
			order.add(group.getCOSObject());
		});
		if (!layers.isEmpty()) {
			COSArray below = new COSArray();
			below.setDirect(true);
			below.add(new COSString(Messages.PdfFile_layers));
			layers.values().forEach(group -> {
				all.add(group.getCOSObject());
				below.add(group.getCOSObject());
			});
			order.add(below);
		}
		COSDictionary shown = new COSDictionary();
		shown.setString(COSName.NAME, CREATOR);
		shown.setItem(COSName.BASE_STATE, COSName.ON);
		shown.setItem(COSName.ON, new COSArray(all.toList()));
		shown.setItem(COSName.OFF, new COSArray(List.of()));
		shown.setItem(COSName.ORDER, order);
		COSDictionary properties = new COSDictionary();
		properties.setItem(COSName.OCGS, all);
		properties.setItem(COSName.D, shown);
		return new PDOptionalContentProperties(properties);
	}

	/** Of what is on the pages, so that documents that differ have ids that do. */
	private byte[] digest() throws IOException {
		try {
			MessageDigest sha = MessageDigest.getInstance("SHA-256");
			for (PDPage page : document.getPages()) {
				sha.update(page.getMediaBox().toString().getBytes(StandardCharsets.UTF_8));
				for (Iterator<PDStream> contents = page.getContentStreams(); contents.hasNext();) {
					try (InputStream packed = new DigestInputStream(contents.next().getCOSObject().createRawInputStream(), sha)) {
						packed.transferTo(OutputStream.nullOutputStream());
					}
				}
			}
			return sha.digest();
		} catch (NoSuchAlgorithmException never) {
			throw new AssertionError(never);
		}
	}

	@Override
	public void close() throws IOException {
		document.close();
	}

	/** The library closes what it has written to; the stream is the caller's. */
	private static final class KeptOpen extends FilterOutputStream {

		KeptOpen(OutputStream out) {
			super(out);
		}

		@Override
		public void write(byte[] bytes, int from, int count) throws IOException {
			out.write(bytes, from, count);
		}

		@Override
		public void close() throws IOException {
			flush();
		}
	}
}
