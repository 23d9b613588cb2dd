package org.frisket.cli.sheets;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.VerbOptions;
import org.frisket.model.JobFile;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Parts of a file, or of jobs, on sheets or a roll. */
@Command(name = "impose", description = "Lays every shape of a file, or the parts of jobs, on sheets or a roll by their true shape, with little waste.", //
		sortOptions = false)
public final class ImposeVerb implements Callable<Integer> {

	@Parameters(arity = "1..*", paramLabel = "FILE", description = "The parts: every path of an outline file; data-quantity of a path of an SVG file says how many. Or jobs, .frjob files, that are laid together by stock and colour, as many copies as each says, what is due first on the first sheets; the first of them gets the sheets, the others are its guests.")
	private List<Path> files;

	@Mixin
	private LayingOptions laying = new LayingOptions();

	@Option(names = "--apart", description = "Of jobs: every piece of a wording or another element by itself.")
	private boolean apart;

	@Option(names = "--by-job", description = "Of jobs: no sheet holds parts of two of them.")
	private boolean byJob;

	@Option(names = "--stock", paramLabel = "ID", description = "Of jobs: the stock of layers that have none.")
	private String stock;

	@Option(names = "--keep-offcuts", description = "Of jobs: keeps what is left of each sheet as a leftover of the studio, for other jobs, and takes away the leftovers that are used.")
	private boolean keepOffcuts;

	@Option(names = "--out", paramLabel = "FILE", description = "What to write, by its ending: .frjob or a format of frisket export; may be given several times. Sheets of an outline file lie side by side, each a layer; of jobs each is a file of its own, numbered if there are several, or all are in the .frjob file.")
	private List<Path> outputs = List.of();

	@Option(names = "--set", paramLabel = "OPTION=VALUE", description = "An option of the format read, as of frisket import; of jobs one of the format written, as of frisket export.")
	private Map<String, String> options = Map.of();

	@Option(names = "--json", description = "Writes JSON for machines; lengths in mm.")
	private boolean json;

	@Mixin
	private VerbOptions verb = new VerbOptions();

	@Override
	public Integer call() throws Refusal {
		verb.chooseStudio();
		long jobs = files.stream().filter(ImposeVerb::isJob).count();
		if (jobs == files.size()) {
			return new JobLaying(files, laying, new JobLaying.Ways(apart, byJob, keepOffcuts, stock), options, outputs, json)
					.run(verb.out(), verb.err());
		}
		if (files.size() > 1) {
			throw new Refusal("give one outline file, or jobs (.frjob) only");
		}
		if (apart || byJob || keepOffcuts || stock != null) {
			throw new Refusal("--apart, --by-job, --stock and --keep-offcuts are for jobs (.frjob)");
		}
		return new ArtLaying(files.get(0), laying, options, outputs, json).run(verb.out(), verb.err());
	}

	static boolean isJob(Path file) {
		return file.toString().toLowerCase(Locale.ROOT).endsWith(JobFile.ENDING);
	}
}
