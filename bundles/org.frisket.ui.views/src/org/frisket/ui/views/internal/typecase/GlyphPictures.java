package org.frisket.ui.views.internal.typecase;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageDataProvider;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Outline;
import org.frisket.page.Coverage;
import org.frisket.page.chart.CellFit;
import org.frisket.typography.chart.GlyphChart;
import org.frisket.typography.chart.GlyphEntry;

/**
 * Pictures of glyphs in square boxes. They are made in the background, those of the latest paint only, and a bounded
 * number of bytes of them is kept. The UI thread gives them their colour and paints them.
 */
public final class GlyphPictures {

	/** Of coverage; an image takes four times as much. */
	private static final int MOST_BYTES = 6 << 20;
	private static final double CAPITAL = 0.42;
	private static final double BASELINE = 0.68;
	private static final double SPACE = 0.06;

	/**
	 * @param size of the box in points
	 * @param zoom of the screen, in percent
	 */
	private record Key(GlyphChart chart, int glyph, int size, int zoom) {
	}

	private record Inked(Key key, RGB ink) {
	}

	private final Display display;
	private final Runnable changed;
	private final Job job;
	private final Deque<Key> wanted = new ArrayDeque<>();
	private final Map<Key, Coverage> made = new LinkedHashMap<>(16, 0.75f, true);
	/** Only for the UI thread. */
	private final Map<Inked, Image> images = new LinkedHashMap<>(16, 0.75f, true);
	private int bytes;
	private int imageBytes;
	private boolean told;
	private final AtomicInteger madeEver = new AtomicInteger();
	private final AtomicInteger madeOnScreenThread = new AtomicInteger();

	/** @param changed run on the UI thread when there are more pictures */
	GlyphPictures(Display display, Runnable changed) {
		this.display = display;
		this.changed = changed;
		job = Job.createSystem(Messages.GlyphPictures_job, (ICoreRunnable) this::make);
		job.setPriority(Job.SHORT);
	}

	/** A paint begins: what was wanted for earlier ones and is not made yet is not needed any more. */
	synchronized void begin() {
		wanted.clear();
	}

	/** The picture of a glyph, or null while it is not made. */
	Image picture(GlyphChart chart, GlyphEntry entry, int size, int zoom, RGB ink) {
		Key key = new Key(chart, entry.glyph(), size, zoom);
		Inked inked = new Inked(key, ink);
		Image known = images.get(inked);
		if (known != null) {
			return known;
		}
		Coverage coverage = coverage(key);
		if (coverage == null) {
			return null;
		}
		Image image = new Image(display, provider(coverage, size, zoom, ink));
		images.put(inked, image);
		imageBytes += coverage.values().length;
		var eldest = images.entrySet().iterator();
		while (imageBytes > MOST_BYTES && images.size() > 1) {
			Map.Entry<Inked, Image> last = eldest.next();
			int pixels = pixels(last.getKey().key());
			imageBytes -= pixels * pixels;
			last.getValue().dispose();
			eldest.remove();
		}
		return image;
	}

	private static int pixels(Key key) {
		return Math.max(1, key.size() * key.zoom() / 100);
	}

	private static ImageDataProvider provider(Coverage coverage, int size, int zoom, RGB ink) {
		byte[] colours = new byte[3 * coverage.values().length];
		for (int i = 0; i < colours.length; i += 3) {
			colours[i] = (byte) ink.red;
			colours[i + 1] = (byte) ink.green;
			colours[i + 2] = (byte) ink.blue;
		}
		ImageData data = new ImageData(coverage.width(), coverage.height(), 24,
				new PaletteData(0xff0000, 0xff00, 0xff), 1, colours);
		data.alphaData = coverage.values();
		return asked -> asked == zoom ? data
				: data.scaledTo(Math.max(1, size * asked / 100), Math.max(1, size * asked / 100));
	}

	private synchronized Coverage coverage(Key key) {
		Coverage known = made.get(key);
		if (known == null) {
			wanted.addLast(key);
			job.schedule();
		}
		return known;
	}

	private void make(IProgressMonitor monitor) {
		for (Key key = next(); key != null && !monitor.isCanceled(); key = next()) {
			Coverage coverage = coverage(key.chart(), key.glyph(), pixels(key));
			madeEver.incrementAndGet();
			if (Display.findDisplay(Thread.currentThread()) != null) {
				madeOnScreenThread.incrementAndGet();
			}
			keep(key, coverage);
		}
	}

	private synchronized void keep(Key key, Coverage coverage) {
		made.put(key, coverage);
		bytes += coverage.values().length;
		var eldest = made.entrySet().iterator();
		while (bytes > MOST_BYTES && made.size() > 1) {
			bytes -= eldest.next().getValue().values().length;
			eldest.remove();
		}
		if (!told && !display.isDisposed()) {
			told = true;
			display.asyncExec(this::tell);
		}
	}

	private synchronized Key next() {
		Key key = wanted.pollFirst();
		while (key != null && made.containsKey(key)) {
			key = wanted.pollFirst();
		}
		return key;
	}

	private static Coverage coverage(GlyphChart chart, int glyph, int pixels) {
		Outline outline = chart.outline(glyph, 1);
		if (outline.isEmpty()) {
			return new Coverage(pixels, pixels, new byte[pixels * pixels]);
		}
		double space = SPACE * pixels;
		return Coverage.of(outline.transformed(new CellFit(CAPITAL * pixels, BASELINE * pixels).place(outline.bounds(),
				new Bounds(space, space, pixels - space, pixels - space), 0)), 1, 0, 0, pixels, pixels);
	}

	private void tell() {
		synchronized (this) {
			told = false;
		}
		changed.run();
	}

	/** How many were made so far. */
	public int madeEver() {
		return madeEver.get();
	}

	/** How many of them the UI thread had to make. */
	public int madeOnScreenThread() {
		return madeOnScreenThread.get();
	}

	/** Bytes of what is kept, and of what is kept in colour. */
	public synchronized int keptBytes() {
		return bytes + 4 * imageBytes;
	}

	/** No more is ever kept. */
	public static int mostBytes() {
		return 5 * MOST_BYTES;
	}

	/** Gives everything back. */
	void close() {
		begin();
		job.cancel();
		images.values().forEach(Image::dispose);
		images.clear();
	}
}
