package org.frisket.print.internal.drawn;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType3Font;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationPopup;
import org.eclipse.osgi.util.NLS;
import org.frisket.print.picture.PictureRemark;
import org.frisket.print.picture.PictureRemark.Severity;

/** What of a page will not look here as it does where it was made. */
final class PdfScan {

	/** Kinds of packing that there are no decoders for here (ISO 32000-1, 7.4.7 and 7.4.9). */
	private static final Set<COSName> NOT_DECODED = Set.of(COSName.JBIG2_DECODE, COSName.JPX_DECODE);
	private static final int DEEPEST = 20;

	private final Set<COSBase> seen = Collections.newSetFromMap(new IdentityHashMap<>());
	private final Set<String> fonts = new TreeSet<>();
	private int pictures;

	private PdfScan() {
	}

	static List<PictureRemark> remarks(PDPage page, int pages) {
		List<PictureRemark> remarks = new ArrayList<>();
		PdfScan scan = new PdfScan();
		boolean notes = false;
		try {
			scan.look(page.getResources(), 0);
			notes = page.getAnnotations().stream().anyMatch(PdfScan::isSeen);
		} catch (IOException | RuntimeException e) {
			// damage is told when it is drawn
			notes = false;
		}
		if (!scan.fonts.isEmpty()) {
			remarks.add(new PictureRemark(Severity.CAUTION, "font-not-embedded",
					NLS.bind(Messages.PdfScan_fonts, String.join(", ", scan.fonts))));
		}
		if (scan.pictures > 0) {
			remarks.add(new PictureRemark(Severity.CAUTION, "pictures-left-out",
					NLS.bind(Messages.PdfScan_pictures, scan.pictures)));
		}
		if (notes) {
			remarks.add(new PictureRemark(Severity.NOTE, "notes-left-out", Messages.PdfScan_notes));
		}
		if (pages > 1) {
			remarks.add(new PictureRemark(Severity.NOTE, "one-page", NLS.bind(Messages.PdfScan_pages, pages)));
		}
		return remarks;
	}

	/** What only leads elsewhere, or opens on a click, is no loss on paper. */
	private static boolean isSeen(PDAnnotation note) {
		return !(note instanceof PDAnnotationLink || note instanceof PDAnnotationPopup || note.isHidden());
	}

	private void look(PDResources resources, int depth) throws IOException {
		if (resources == null || depth > DEEPEST || !seen.add(resources.getCOSObject())) {
			return;
		}
		for (COSName name : resources.getFontNames()) {
			PDFont font = resources.getFont(name);
			if (font != null && !font.isEmbedded() && !(font instanceof PDType3Font)) {
				fonts.add(font.getName() == null ? name.getName() : font.getName());
			}
		}
		for (COSName name : resources.getXObjectNames()) {
			PDXObject object = resources.getXObject(name);
			if (object instanceof PDFormXObject form) {
				look(form.getResources(), depth + 1);
			} else if (object instanceof PDImageXObject image && seen.add(image.getCOSObject())
					&& image.getStream().getFilters().stream().anyMatch(NOT_DECODED::contains)) {
				pictures++;
			}
		}
	}
}
