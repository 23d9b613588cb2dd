package org.frisket.print.picture;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import javax.imageio.stream.FileImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.print.internal.drawn.DrawnArt;
import org.frisket.print.internal.drawn.PdfArt;
import org.frisket.print.picture.PictureRemark.Severity;

/**
 * A file with a picture: PNG, JPEG, GIF, BMP, TIFF or WebP, an SVG, or a page of a PDF. All but the pixels is known from its
 * head; nothing is decoded for it, and a picture that is too large is refused there. SVG and PDF have no pixels: they are
 * drawn with as many as are wanted.
 */
public final class PictureFile {

	private static final long MILLION = 1_000_000;

	private final String name;
	private final PictureSource source;
	private final PictureFormat format;
	private final Head head;
	/** Null for what has pixels of its own. */
	private final DrawnArt art;
	private final int page;

	PictureFile(String name, PictureSource source, PictureFormat format, Head head, DrawnArt art, int page)
			throws UnreadablePictureException {
		this.name = name;
		this.source = source;
		this.format = format;
		this.head = head;
		this.art = art;
		this.page = page;
		if (head.width < 1 || head.height < 1) {
			throw new UnreadablePictureException(name, NLS.bind(Messages.PictureFile_noSize, head.width, head.height), null);
		}
		checkPixels(head);
	}

	private void checkPixels(Head asked) throws UnreadablePictureException {
		if ((long) asked.width * asked.height > Pixels.MOST) {
			throw new UnreadablePictureException(name, NLS.bind(Messages.PictureFile_tooLarge,
					new Object[] { asked.width, asked.height, Pixels.MOST / MILLION }), null);
		}
	}

	/** Its first page. @throws UnreadablePictureException if it is not there, of no known kind, damaged in its head, or too large */
	public static PictureFile of(Path file) throws UnreadablePictureException {
		return of(file, 1);
	}

	/** @param page from 1, of a PDF; see {@link ArtPage} and {@link #of(Path)} */
	public static PictureFile of(Path file, int page) throws UnreadablePictureException {
		if (!Files.isRegularFile(file)) {
			throw new UnreadablePictureException(file.toString(), Messages.PictureFile_missing, null);
		}
		return new Opening(file.toString(), () -> new FileImageInputStream(file.toFile()), page).open();
	}

	/** @param name for messages; see {@link #of(Path)} */
	public static PictureFile of(String name, byte[] bytes) throws UnreadablePictureException {
		return of(name, bytes, 1);
	}

	/** @param name for messages; see {@link #of(Path, int)} */
	public static PictureFile of(String name, byte[] bytes, int page) throws UnreadablePictureException {
		return new Opening(name, () -> new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes)), page).open();
	}

	/** As it was called. */
	public String name() {
		return name;
	}

	public PictureFormat format() {
		return format;
	}

	/** With the page, if it is not the first; what {@link org.frisket.model.Picture#getMediaType()} is to be. */
	public String mediaType() {
		return ArtPage.mediaType(format, page);
	}

	/** From 1. */
	public int page() {
		return page;
	}

	/** How many pages the file has; 1 for all but PDF. */
	public int pages() {
		return art instanceof PdfArt pdf ? pdf.pages() : 1;
	}

	/** In pixels, turned as the file says it is to be seen; of what has none, in pixels that it is drawn with. */
	public int width() {
		return head.isTurned() ? head.height : head.width;
	}

	/** In pixels, as {@link #width()} is. */
	public int height() {
		return head.isTurned() ? head.width : head.height;
	}

	/** In mm, at its own resolution. */
	public double trueWidth() {
		return art != null ? art.width() : width() * resolution().pixelWidth();
	}

	/** In mm, at its own resolution. */
	public double trueHeight() {
		return art != null ? art.height() : height() * resolution().pixelHeight();
	}

	/** Across and down as it is to be seen; {@link Resolution#USUAL} where the file says nothing. */
	public Resolution resolution() {
		if (head.dpiX == 0) {
			return Resolution.assumed();
		}
		Resolution stored = new Resolution(head.dpiX, head.dpiY,
				art != null ? Resolution.Source.DRAWN : Resolution.Source.FILE);
		return head.isTurned() ? stored.turned() : stored;
	}

	/** The ICC profile that the file's colours are meant in, as it stands there. */
	public Optional<byte[]> profile() {
		return head.profile.size() == 0 ? Optional.empty() : Optional.of(head.profile.toByteArray());
	}

	/** Whether its rows are stored in the order in which they are seen, so that a reader that knows no EXIF shows it as it is. */
	public boolean isUpright() {
		return head.orientation == 1;
	}

	/** Whether there is more than the one picture that is used. */
	public boolean isAnimated() {
		return head.frames > 1;
	}

	/** What is to be told before anything is decoded, at the resolution that it is to be printed with. */
	public List<PictureRemark> remarks(Resolution printed) {
		if (art != null) {
			return art.remarks();
		}
		List<PictureRemark> remarks = new ArrayList<>();
		if (isAnimated()) {
			remarks.add(new PictureRemark(Severity.NOTE, "first-only", format == PictureFormat.TIFF
					? Messages.PictureFile_pages : Messages.PictureFile_animated));
		}
		if (printed.source() == Resolution.Source.ASSUMED) {
			remarks.add(new PictureRemark(Severity.CAUTION, "resolution-assumed",
					NLS.bind(Messages.PictureFile_assumed, Math.round(Resolution.USUAL))));
		}
		if (SrgbValues.isDamaged(head)) {
			remarks.add(new PictureRemark(Severity.CAUTION, "profile-unused", Messages.PictureFile_profile));
		}
		double least = Math.min(printed.x(), printed.y());
		if (least < Resolution.COARSE) {
			remarks.add(new PictureRemark(Severity.CAUTION, "resolution-low", NLS.bind(Messages.PictureFile_coarse,
					Math.round(least), Math.round(Resolution.COARSE))));
		}
		return remarks;
	}

	/**
	 * The same with another resolution, if it is drawn; pictures that have pixels stay as they are.
	 *
	 * @throws UnreadablePictureException if that makes too many pixels
	 */
	public PictureFile drawnAt(double dpi) throws UnreadablePictureException {
		return art == null ? this : new PictureFile(name, source, format, DrawnHead.at(art, dpi), art, page);
	}

	/**
	 * The same as fine as is usual for the size that it is printed in, if it is drawn.
	 *
	 * @param mm width in print
	 * @throws UnreadablePictureException if that makes too many pixels
	 */
	public PictureFile drawnFor(double mm) throws UnreadablePictureException {
		return art == null ? this : new PictureFile(name, source, format, DrawnHead.printed(art, mm), art, page);
	}

	/**
	 * Decodes it, turned and in sRGB; what has no pixels is drawn at {@link #resolution()}, transparent where nothing is. Takes
	 * eight bytes a pixel while it works and leaves four.
	 *
	 * @throws UnreadablePictureException if it is damaged, or the memory does not suffice
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public Pixels pixels(Monitor monitor) throws UnreadablePictureException {
		return pixels(monitor, null);
	}

	/**
	 * The same of a file that breaks off or is damaged, as far as there is a picture.
	 *
	 * @param damage told what the file lacks, as its decoder says it; null to refuse the file
	 * @throws UnreadablePictureException if there is no picture, or the memory does not suffice
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public Pixels pixels(Monitor monitor, Consumer<String> damage) throws UnreadablePictureException {
		if (art == null) {
			return new PictureDecoder(name, source, format, head).decode(1, monitor, damage);
		}
		BufferedImage image = new DrawnPicture(name, art).image(head, monitor);
		return new Pixels(head.width, head.height, ((DataBufferInt) image.getRaster().getDataBuffer()).getData());
	}

	/**
	 * The picture as large as it is wanted, for a screen or a print. What has pixels is never made larger than it is; little
	 * memory is taken for what is not wanted.
	 *
	 * @param width in pixels; the height follows
	 * @throws UnreadablePictureException if it is damaged, the memory does not suffice, or that are too many pixels
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public BufferedImage image(int width, Monitor monitor) throws UnreadablePictureException {
		return image(width, monitor, null);
	}

	/** The same of a file that is damaged; see {@link #pixels(Monitor, Consumer)}. */
	public BufferedImage image(int width, Monitor monitor, Consumer<String> damage) throws UnreadablePictureException {
		int wanted = Math.max(1, width);
		if (art != null) {
			Head drawn = DrawnHead.wide(art, wanted);
			checkPixels(drawn);
			return new DrawnPicture(name, art).image(drawn, monitor);
		}
		// two pixels for each, at least, are enough for their mean
		int step = Math.max(1, width() / (2 * wanted));
		Pixels read = new PictureDecoder(name, source, format, head).decode(step, monitor, damage);
		return FewerPixels.of(read, wanted, monitor).image();
	}

	/**
	 * Draws what has no pixels with its upper left corner at the origin, on a ground that nothing was drawn on yet.
	 *
	 * @param width of all of it, in units of the graphics; so is the height
	 * @throws IllegalStateException if it has pixels
	 * @throws UnreadablePictureException if it is damaged
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public void draw(Graphics2D graphics, double width, double height, Monitor monitor) throws UnreadablePictureException {
		if (art == null) {
			throw new IllegalStateException(format + " has pixels");
		}
		new DrawnPicture(name, art).draw(graphics, width, height, monitor);
	}
}
