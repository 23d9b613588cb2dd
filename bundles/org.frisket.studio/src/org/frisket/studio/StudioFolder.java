package org.frisket.studio;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.osgi.util.NLS;
import org.frisket.model.WholeFile;

/**
 * A studio folder by its place:
 * <pre>
 * limits.properties   what the studio's stocks allow, if they are not what is usual
 * studio.properties   the studio's preferences, and the layout of the folder
 * presets/            exports that are done again and again, a text file for each; made when one is saved
 * fonts/              the studio's own fonts; what is dropped in is there
 * kept-fonts/         the fonts that jobs were made with, by content
 * studio.mv.db        what is counted and looked up, see {@link org.frisket.studio.store.Store}; made when it is needed
 * studio.lock         held by whoever uses the database
 * studio.revision     another text after every change of the database, with how many it has kept
 * </pre>
 * Several desks may share one.
 */
public record StudioFolder(Path path) {

	/** Of what stands where in the folder. A folder with a higher one comes from a newer Frisket. */
	static final int LAYOUT = 1;

	private static final String LAYOUT_KEY = "layout";
	private static final String PREFERENCES = "studio.properties";
	private static final String LIMITS = "limits.properties";
	private static final String PRESETS = "presets";
	private static final String FONTS = "fonts";
	private static final String KEPT_FONTS = "kept-fonts";
	private static final String DATABASE = "studio.mv.db";
	private static final String DATABASE_LOCK = "studio.lock";
	private static final String DATABASE_REVISION = "studio.revision";

	public StudioFolder {
		path = path.toAbsolutePath().normalize();
	}

	/** Where the studio's own fonts lie. */
	public Path fonts() {
		return path.resolve(FONTS);
	}

	/** The file with what the studio's stocks allow, which need not be there. */
	public Path limits() {
		return path.resolve(LIMITS);
	}

	/** Where the studio's presets of exports lie, a folder that need not be there. */
	public Path presets() {
		return path.resolve(PRESETS);
	}

	/** The fonts that jobs were made with. */
	public KeptFonts keptFonts() {
		return new KeptFonts(path.resolve(KEPT_FONTS));
	}

	/** The file of the studio's database. */
	public Path database() {
		return path.resolve(DATABASE);
	}

	/** The file that is locked while the database is in use. */
	public Path databaseLock() {
		return path.resolve(DATABASE_LOCK);
	}

	/** The file that says whether the database is as it was, without opening it. */
	public Path databaseRevision() {
		return path.resolve(DATABASE_REVISION);
	}

	/** What the studio as a whole has decided, for all its desks. */
	public StudioPreferences preferences() {
		return new StudioPreferences(path.resolve(PREFERENCES));
	}

	/**
	 * Makes sure that the folder is there and can be read; one that is missing is made, with all that belongs in it. A
	 * folder that is there need not be writable: a desk may only look things up in it.
	 *
	 * @throws StudioException if it is no folder, cannot be made or read, or comes from a newer Frisket
	 */
	public StudioFolder open() throws StudioException {
		if (Files.exists(path) && !Files.isDirectory(path)) {
			throw new StudioException(path, Messages.StudioFolder_noFolder);
		}
		if (!Files.exists(path)) {
			make();
		}
		if (!Files.isReadable(path) || !Files.isExecutable(path)) {
			throw new StudioException(path, Messages.StudioFolder_notReadable);
		}
		checkLayout();
		return this;
	}

	/**
	 * Makes sure that the folder is there and can be written to.
	 *
	 * @throws StudioException if not, or for a reason of {@link #open()}
	 */
	public StudioFolder openForWriting() throws StudioException {
		open();
		if (!Files.isWritable(path)) {
			throw new StudioException(path, Messages.StudioFolder_readOnly);
		}
		make();
		return this;
	}

	private void make() throws StudioException {
		for (Path above = path.getParent(); above != null; above = above.getParent()) {
			if (Files.exists(above) && !Files.isDirectory(above)) {
				throw new StudioException(path, NLS.bind(Messages.StudioFolder_inTheWay, above));
			}
		}
		try {
			Files.createDirectories(fonts());
			Files.createDirectories(keptFonts().folder());
			if (preferences().get(LAYOUT_KEY).isEmpty()) {
				preferences().put(LAYOUT_KEY, Integer.toString(LAYOUT));
			}
		} catch (FileAlreadyExistsException inTheWay) {
			throw new StudioException(path, NLS.bind(Messages.StudioFolder_inTheWay, inTheWay.getFile()), inTheWay);
		} catch (IOException failed) {
			throw new StudioException(path, NLS.bind(Messages.StudioFolder_notMade, WholeFile.reason(failed)), failed);
		}
	}

	private void checkLayout() throws StudioException {
		String layout;
		try {
			layout = preferences().get(LAYOUT_KEY).orElse("1");
		} catch (IOException failed) {
			throw new StudioException(path,
					NLS.bind(Messages.StudioFolder_preferences, PREFERENCES, WholeFile.reason(failed)), failed);
		}
		if (!layout.matches("\\d{1,6}") || Integer.parseInt(layout) > LAYOUT) {
			throw new StudioException(path, NLS.bind(Messages.StudioFolder_newer, layout));
		}
	}
}
