package org.frisket.material.trials;

import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.frisket.material.tools.Machine;
import org.frisket.material.tools.Tool;

/**
 * What a studio keeps of its tools, machines, trials and runs. Lists are in the order of ids, those of trials and runs by
 * day first. Saving what has an id that is there replaces it, except for trials and runs, which are facts and stay.
 */
public interface SettingsStore {

	void save(Tool tool) throws SQLException;

	Optional<Tool> tool(String id) throws SQLException;

	List<Tool> tools() throws SQLException;

	/**
	 * Takes a tool away, and what its edge has gone through. What was tried and run with it stays, as the facts they are, and
	 * counts again if a tool of this id is saved.
	 *
	 * @return whether it was there
	 */
	boolean removeTool(String id) throws SQLException;

	void save(Machine machine) throws SQLException;

	Optional<Machine> machine(String id) throws SQLException;

	List<Machine> machines() throws SQLException;

	/** Takes a machine away; see {@link #removeTool}. */
	boolean removeMachine(String id) throws SQLException;

	/** The studio's rules of thumb as texts of their options; those it left as they are may be missing. */
	Map<String, String> rules() throws SQLException;

	/** Replaces all. */
	void saveRules(Map<String, String> rules) throws SQLException;

	/** @throws SQLException if there is a trial with this id */
	void add(Trial trial) throws SQLException;

	/** All trials, the judged cells of sheets among them. */
	List<Trial> trials() throws SQLException;

	void save(TestSheet sheet) throws SQLException;

	Optional<TestSheet> sheet(String id) throws SQLException;

	List<TestSheet> sheets() throws SQLException;

	/**
	 * Keeps a run, and counts its metres on the edge of its tool, if it is one of the studio's and has one.
	 *
	 * @throws SQLException if there is a run with this id; nothing is counted then
	 */
	void add(Run run) throws SQLException;

	List<Run> runs() throws SQLException;
}
