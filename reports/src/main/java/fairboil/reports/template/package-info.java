/**
 * An empty study for {@code fairboil new}.
 *
 * <p>Entry points: {@link fairboil.reports.template.StudyTemplate}, and for a group that repeats
 * the burns of a study {@link fairboil.reports.template.GroupTemplate}.
 */
package fairboil.reports.template;
