"use strict";

/** Sound and clock may be so far apart before the clock jumps. */
const JUMP_SECONDS = 0.05;

/**
 * The time of the show: runs, rests, runs slower, goes round. Where there is sound that plays, it follows the sound, which
 * nobody can hurry: between two readings of the sound's place, which comes in steps, it goes on by the page's own clock, and
 * is drawn softly to where the sound is.
 */
class ShowClock {
  /**
   * @param start the first time, in seconds
   * @param end the time at which it goes back to the start
   * @param millisNow the page's clock
   */
  constructor(start, end, millisNow = () => performance.now()) {
    this.millisNow = millisNow;
    this.running = false;
    this.speed = 1;
    this.loop = null;
    this.sound = null;
    this.soundStarts = 0;
    this.lateSeconds = 0;
    this.anchorSeconds = start;
    this.anchorMillis = millisNow();
    this.setSpan(start, end);
  }

  setSpan(start, end) {
    this.start = start;
    this.end = end;
    this.loop = null;
  }

  /**
   * Follows a sound from now on.
   *
   * @param sound an audio element, or whatever has currentTime, duration, paused, play() and pause(); null for none
   * @param starts at which time of the show it begins
   */
  follow(sound, starts) {
    this.set(this.running ? this.counted() : this.anchorSeconds);
    this.sound?.pause();
    this.sound = sound;
    this.soundStarts = starts;
    this.lastSoundTime = -1;
    if (sound) {
      sound.playbackRate = this.speed;
      this.placeSound();
    }
  }

  play() {
    this.set(this.now());
    this.running = true;
    this.startSound();
  }

  pause() {
    this.set(this.now());
    this.running = false;
    this.sound?.pause();
  }

  seek(seconds) {
    this.set(Math.max(this.start, Math.min(seconds, this.end)));
    if (this.sound) {
      this.placeSound();
    }
  }

  setSpeed(speed) {
    this.set(this.now());
    this.speed = speed;
    if (this.sound) {
      this.sound.playbackRate = speed;
    }
  }

  /** Goes round between two times; null for the whole. */
  setLoop(loop) {
    this.set(this.now());
    this.loop = loop;
    if (loop && (this.now() < loop.from || this.now() >= loop.to)) {
      this.seek(loop.from);
    }
  }

  /** The time of the show, from the start up to the end. */
  now() {
    if (!this.running) {
      return this.anchorSeconds;
    }
    this.pullToSound();
    const seconds = this.counted();
    const from = this.loop ? this.loop.from : this.start;
    const to = this.loop ? this.loop.to : this.end;
    if (seconds < to) {
      return seconds;
    }
    this.seek(from + ((seconds - to) % Math.max(to - from, 1e-3)));
    return this.anchorSeconds;
  }

  /** How far the clock is before the sound, in seconds; null where it does not follow any. */
  aheadOfSound() {
    return this.isFollowing() ? this.counted() - this.soundSeconds() : null;
  }

  counted() {
    return this.anchorSeconds + ((this.millisNow() - this.anchorMillis) / 1000) * this.speed;
  }

  set(seconds) {
    this.anchorSeconds = seconds;
    this.anchorMillis = this.millisNow();
  }

  isFollowing() {
    return this.sound !== null && this.running && !this.sound.paused && !this.sound.seeking && this.sound.currentTime > 0;
  }

  /** At which time of the show the sound is heard. */
  soundSeconds() {
    return this.sound.currentTime + this.soundStarts - this.lateSeconds;
  }

  pullToSound() {
    if (!this.isFollowing()) {
      this.startSound();
      return;
    }
    if (this.sound.currentTime === this.lastSoundTime) {
      return;
    }
    this.lastSoundTime = this.sound.currentTime;
    const ahead = this.counted() - this.soundSeconds();
    this.set(this.counted() - (Math.abs(ahead) > JUMP_SECONDS ? ahead : ahead * 0.1));
  }

  placeSound() {
    const place = this.anchorSeconds - this.soundStarts;
    const heard = place >= 0 && place < (this.sound.duration || Infinity);
    if (heard) {
      this.sound.currentTime = place;
      this.lastSoundTime = -1;
    } else {
      this.sound.pause();
    }
  }

  /** A sound that begins later than the show, or was over when the show began again. */
  startSound() {
    if (!this.sound || !this.running || !this.sound.paused || this.starting) {
      return;
    }
    const place = this.counted() - this.soundStarts;
    if (place < 0 || place >= (this.sound.duration || Infinity)) {
      return;
    }
    this.starting = true;
    this.sound.currentTime = place;
    this.sound.playbackRate = this.speed;
    Promise.resolve(this.sound.play())
      .then(() => this.whenHeard?.(true), () => this.whenHeard?.(false))
      .finally(() => {
        this.starting = false;
      });
  }
}
