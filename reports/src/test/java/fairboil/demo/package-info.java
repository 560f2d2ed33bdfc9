/**
 * Invented studies: the demonstration in {@code data-demo}, and studies whose answers are known.
 *
 * <p>{@link fairboil.demo.DemoStudy} makes {@code data-demo}; its {@code main} writes it. {@link
 * fairboil.demo.KnownTruthStudy} and {@link fairboil.demo.RulerStudy} make small studies for tests
 * and tell what a right answer is; {@link fairboil.demo.BenchStudy} makes plain ones of any size
 * for timing. All three are laid out by {@link fairboil.demo.PlainStudy}. Below them: {@link
 * fairboil.demo.Burn} with {@link fairboil.demo.PotModel} and {@link fairboil.demo.FlameModel}
 * (what truly happens), {@link fairboil.demo.LogDialect} and {@link fairboil.demo.Blemish} (what a
 * logger makes of it), {@link fairboil.demo.Drilling} (holes as drilled and as measured).
 *
 * <p>The formulas here are not those of {@code fairboil.analysis}, which this package never uses to
 * make a study: else the program would test itself. Chance comes from seeds and functions from
 * {@link java.lang.StrictMath}, so that the same bytes come out on every machine.
 */
package fairboil.demo;
