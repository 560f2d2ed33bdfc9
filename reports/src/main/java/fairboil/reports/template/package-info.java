/**
 * An empty study for {@code fairboil new}.
 *
 * <p>Entry point: {@link fairboil.reports.template.StudyTemplate}.
 */
package fairboil.reports.template;
