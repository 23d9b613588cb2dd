/**
 * The job: what a customer ordered and how it is made, as one tree of {@link org.frisket.model.Job},
 * {@link org.frisket.model.Layer}s and {@link org.frisket.model.Element}s.
 *
 * <p>Only decisions are held here. Shapes, sheets' contents and tool paths are derived from them by others. Lengths are
 * millimetres, y points down. {@link org.frisket.model.Jobs} makes jobs and finds things in them,
 * {@link org.frisket.model.JobFile} reads and writes them. The interfaces of the job's parts are generated from
 * {@code model/frisket.ecore}.
 */
package org.frisket.model;
