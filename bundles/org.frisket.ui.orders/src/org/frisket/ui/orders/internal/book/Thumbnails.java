package org.frisket.ui.orders.internal.book;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageDataProvider;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.orders.Entry;
import org.frisket.orders.OrderException;
import org.frisket.orders.paper.JobThumbnail;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.ui.orders.internal.OrderDesk;

/**
 * Small pictures of jobs: made off the UI thread when they are asked for, the last asked for first, and kept for as
 * many jobs as a few pages hold. All methods are for the UI thread.
 */
final class Thumbnails {

	static final int WIDTH_PX = 48;
	static final int HEIGHT_PX = 28;
	private static final int KEPT = 300;
	/** No more than rows can be in view: what was scrolled past is not made. */
	private static final int WANTED = 60;
	private static final int ONE_TO_ONE = 100;
	/** After which it is tried again where the order book could not be used. */
	private static final long AGAIN_MS = 2000;
	private static final int ALPHA_SHIFT = 24;

	private record Key(String id, long revision) {

		static Key of(Entry job) {
			return new Key(job.id(), job.revision());
		}
	}

	/** At 100 % and at 200 %; nothing if there is nothing to see. */
	private record Drawn(Optional<ImageData> once, Optional<ImageData> twice) {
	}

	private final Display display;
	private final Runnable arrived;
	private final Map<Key, Optional<Image>> kept = new LinkedHashMap<>(KEPT, 0.75f, true);
	/** The last asked for at the end; also for the thread that makes them. */
	private final Map<Key, Entry> wanted = new LinkedHashMap<>();
	private final Maker maker = new Maker();
	private volatile boolean disposed;

	/** @param arrived told when there is another picture to be seen */
	Thumbnails(Display display, Runnable arrived) {
		this.display = display;
		this.arrived = arrived;
	}

	/** The picture of a job; empty if it has none yet, or nothing that can be seen. Belongs to this object. */
	Optional<Image> of(Entry job) {
		Key key = Key.of(job);
		Optional<Image> known = kept.get(key);
		if (known == null) {
			want(key, job);
			return Optional.empty();
		}
		return known;
	}

	/** Whether it is known what there is to see of a job. */
	boolean has(Entry job) {
		return kept.containsKey(Key.of(job));
	}

	private void want(Key key, Entry job) {
		synchronized (wanted) {
			wanted.remove(key);
			wanted.put(key, job);
			if (wanted.size() > WANTED) {
				Iterator<Key> oldest = wanted.keySet().iterator();
				oldest.next();
				oldest.remove();
			}
		}
		maker.schedule();
	}

	private Optional<Entry> next() {
		synchronized (wanted) {
			Entry last = null;
			for (Entry each : wanted.values()) {
				last = each;
			}
			return Optional.ofNullable(last);
		}
	}

	private void keep(Key key, Drawn drawn) {
		synchronized (wanted) {
			wanted.remove(key);
		}
		if (disposed) {
			return;
		}
		Optional<Image> image = drawn.once().map(once -> new Image(display,
				(ImageDataProvider) zoom -> zoom > ONE_TO_ONE && drawn.twice().isPresent() ? drawn.twice().get()
						: zoom == ONE_TO_ONE ? once : null));
		Optional<Image> before = kept.put(key, image);
		if (before != null) {
			before.ifPresent(Image::dispose);
		}
		Iterator<Optional<Image>> oldest = kept.values().iterator();
		while (kept.size() > KEPT) {
			oldest.next().ifPresent(Image::dispose);
			oldest.remove();
		}
		arrived.run();
	}

	void dispose() {
		disposed = true;
		maker.cancel();
		kept.values().forEach(image -> image.ifPresent(Image::dispose));
		kept.clear();
	}

	private final class Maker extends Job {

		/** Made when it is needed: it looks for fonts. */
		private JobPreparer preparer;

		Maker() {
			super(Messages.Thumbnails_making);
			setSystem(true);
			setPriority(DECORATE);
		}

		@Override
		protected IStatus run(IProgressMonitor monitor) {
			for (Optional<Entry> job = next(); job.isPresent() && !monitor.isCanceled(); job = next()) {
				Key key = Key.of(job.get());
				Drawn drawn;
				try {
					drawn = draw(job.get());
				} catch (IOException otherDesks) {
					if (!disposed) {
						schedule(AGAIN_MS);
					}
					return Status.OK_STATUS;
				}
				synchronized (wanted) {
					wanted.remove(key);
				}
				if (!display.isDisposed()) {
					display.asyncExec(() -> keep(key, drawn));
				}
			}
			return Status.OK_STATUS;
		}

		private Drawn draw(Entry job) throws IOException {
			try {
				if (preparer == null) {
					preparer = new JobPreparer(FontLibraries.installed());
				}
				PreparedJob prepared = preparer.prepare(OrderDesk.book().open(job.number()).job(), Tolerance.DEFAULT,
						Monitor.NONE);
				return new Drawn(picture(prepared, 1), picture(prepared, 2));
			} catch (OrderException unreadable) {
				// the docket says what is wrong with it
				return new Drawn(Optional.empty(), Optional.empty());
			} catch (RuntimeException e) {
				ILog.of(Thumbnails.class).error(getName(), e);
				return new Drawn(Optional.empty(), Optional.empty());
			}
		}
	}

	private static Optional<ImageData> picture(PreparedJob job, int scale) {
		return JobThumbnail.of(job, WIDTH_PX * scale, HEIGHT_PX * scale).map(Thumbnails::data);
	}

	private static ImageData data(BufferedImage image) {
		ImageData data = new ImageData(image.getWidth(), image.getHeight(), 24,
				new PaletteData(0xff0000, 0xff00, 0xff));
		data.alphaData = new byte[data.width * data.height];
		for (int y = 0; y < data.height; y++) {
			for (int x = 0; x < data.width; x++) {
				int argb = image.getRGB(x, y);
				data.setPixel(x, y, argb & 0xffffff);
				data.alphaData[y * data.width + x] = (byte) (argb >>> ALPHA_SHIFT);
			}
		}
		return data;
	}
}
