/**
 * What an effect is to the engine: a name, its settings, and a way to compile itself for a canvas.
 *
 * <p>{@link org.duskloom.engine.effect.Effect} (found by {@link org.duskloom.engine.effect.EffectRegistry}) prepares a
 * {@link org.duskloom.engine.effect.Kernel} from resolved {@link org.duskloom.engine.effect.Settings} and a {@link
 * org.duskloom.engine.effect.Canvas}; each render thread opens its own {@link org.duskloom.engine.effect.Brush} on it
 * and paints {@link org.duskloom.engine.effect.Patch}es of premultiplied linear light. Times are in seconds from the
 * start of the cue, canvas coordinates have x to the right, y up and z toward the audience. No effect is known here by
 * name.
 */
package org.duskloom.engine.effect;
