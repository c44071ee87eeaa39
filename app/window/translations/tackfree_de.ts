<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>Acts</name>
  <message>
   <source>Add &amp;step</source>
   <translation>&amp;Schritt hinzufügen</translation>
  </message>
  <message>
   <source>Add &amp;model</source>
   <translation>&amp;Modell hinzufügen</translation>
  </message>
  <message>
   <source>Add &amp;part</source>
   <translation>&amp;Teil hinzufügen</translation>
  </message>
  <message>
   <source>Add p&amp;lace</source>
   <translation>St&amp;elle hinzufügen</translation>
  </message>
  <message>
   <source>Begin a pro&amp;ject</source>
   <translation>Pro&amp;jekt beginnen</translation>
  </message>
  <message>
   <source>Move &amp;up</source>
   <translation>Nach &amp;oben</translation>
  </message>
  <message>
   <source>Move &amp;down</source>
   <translation>Nach &amp;unten</translation>
  </message>
  <message>
   <source>Same &amp;again, other markings…</source>
   <translation>Noch eins, &amp;andere Markierungen…</translation>
  </message>
  <message>
   <source>&amp;Copy steps</source>
   <translation>Schritte &amp;kopieren</translation>
  </message>
  <message>
   <source>Put steps &amp;here</source>
   <translation>Schritte &amp;hier einsetzen</translation>
  </message>
  <message>
   <source>Split &amp;by places…</source>
   <translation>&amp;Nach Stellen teilen …</translation>
  </message>
  <message>
   <source>R&amp;emove</source>
   <translation>Ent&amp;fernen</translation>
  </message>
  <message>
   <source>&amp;Rename</source>
   <translation>Um&amp;benennen</translation>
  </message>
  <message>
   <source>Adds a model with the same parts and steps, nothing done yet</source>
   <translation>Fügt ein Modell mit denselben Teilen und Schritten hinzu, an dem noch nichts getan ist</translation>
  </message>
  <message>
   <source>Copy &amp;to</source>
   <translation>Ko&amp;pieren zu</translation>
  </message>
  <message>
   <source>model</source>
   <translation>Modell</translation>
  </message>
  <message>
   <source>On the table</source>
   <translation>Auf dem Tisch</translation>
  </message>
  <message>
   <source>All others of the project</source>
   <translation>Alle anderen des Projekts</translation>
  </message>
  <message>
   <source>Choose lines of one kind to remove.</source>
   <translation>Zum Entfernen Zeilen einer einzigen Art wählen.</translation>
  </message>
 </context>
 <context>
  <name>AgainDialog</name>
  <message>
   <source>Same again, other markings</source>
   <translation>Noch eins, andere Markierungen</translation>
  </message>
  <message>
   <source>&amp;How many more</source>
   <translation>&amp;Wie viele noch</translation>
  </message>
  <message>
   <source>They get the parts and steps of {model}, with nothing done and no wishes.</source>
   <translation>Sie bekommen die Teile und Schritte von {model}; nichts ist erledigt, nichts gewünscht.</translation>
  </message>
  <message>
   <source>It is called {name}.</source>
   <translation>Es heißt {name}.</translation>
  </message>
  <message>
   <source>They are called {first} to {last}.</source>
   <translation>Sie heißen {first} bis {last}.</translation>
  </message>
 </context>
 <context>
  <name>AirForm</name>
  <message>
   <source>Where</source>
   <translation>Wo</translation>
  </message>
  <message>
   <source>Another temperature</source>
   <translation>Eine andere Temperatur</translation>
  </message>
  <message>
   <source>{where}: {degrees}, {humidity} % all day</source>
   <translation>{where}: {degrees}, {humidity} % den ganzen Tag</translation>
  </message>
 </context>
 <context>
  <name>AirLogDialog</name>
  <message>
   <source>as the file says</source>
   <translation>wie die Datei angibt</translation>
  </message>
  <message>
   <source>°C</source>
   <translation>°C</translation>
  </message>
  <message>
   <source>°F</source>
   <translation>°F</translation>
  </message>
  <message>
   <source>as the file tells</source>
   <translation>wie die Datei erkennen lässt</translation>
  </message>
  <message>
   <source>day first</source>
   <translation>Tag zuerst</translation>
  </message>
  <message>
   <source>month first</source>
   <translation>Monat zuerst</translation>
  </message>
  <message>
   <source>UTC</source>
   <translation>UTC</translation>
  </message>
  <message>
   <source>winter time all year</source>
   <translation>das ganze Jahr Winterzeit</translation>
  </message>
  <message>
   <source>Make the usual day of it</source>
   <translation>Den üblichen Tag daraus machen</translation>
  </message>
  <message>
   <source>Keep what it was while films dried</source>
   <translation>Behalten, wie es war, während Filme trockneten</translation>
  </message>
  <message>
   <source>Air</source>
   <translation>Luft</translation>
  </message>
  <message>
   <source>&amp;The logger lay at</source>
   <translation>Der &amp;Logger lag bei</translation>
  </message>
  <message>
   <source>Te&amp;mperatures</source>
   <translation>&amp;Temperaturen</translation>
  </message>
  <message>
   <source>&amp;Dates like 05/03</source>
   <translation>&amp;Daten wie 05/03</translation>
  </message>
  <message>
   <source>Time &amp;zone, where it gives no offset</source>
   <translation>Zeit&amp;zone, wo er keinen Abstand angibt</translation>
  </message>
  <message>
   <source>Usual day</source>
   <translation>Üblicher Tag</translation>
  </message>
  <message>
   <source>Films</source>
   <translation>Filme</translation>
  </message>
  <message>
   <source>Ta&amp;ke it</source>
   <translation>Ü&amp;bernehmen</translation>
  </message>
  <message>
   <source>Reading…</source>
   <translation>Wird gelesen…</translation>
  </message>
  <message>
   <source>{n} moments from {first} to {last}, one every {minutes} min.</source>
   <translation>{n} Zeitpunkte von {first} bis {last}, alle {minutes} min einer.</translation>
  </message>
  <message>
   <source>A gap from {start} to {end}.</source>
   <translation>Eine Lücke von {start} bis {end}.</translation>
  </message>
  <message>
   <source>{n} more gaps.</source>
   <translation>{n} weitere Lücken.</translation>
  </message>
  <message>
   <source>{n} lines of a minute that was there already.</source>
   <translation>{n} Zeilen einer Minute, die schon da war.</translation>
  </message>
  <message>
   <source>The usual day: {c:g} °C, {rh:g} % RH; it was {wc:g} °C, {wrh:g} %.</source>
   <translation>Der übliche Tag: {c:g} °C, {rh:g} % rF; er war {wc:g} °C, {wrh:g} %.</translation>
  </message>
  <message>
   <source>{n} readings are kept, in the place of {old}.</source>
   <translation>{n} Ablesungen werden behalten, anstelle von {old}.</translation>
  </message>
  <message>
   <source>never</source>
   <translation>nie</translation>
  </message>
  <message>
   <source>{model}, {place}: dry to handle {after}, not {before}.</source>
   <translation>{model}, {place}: grifffest {after}, nicht {before}.</translation>
  </message>
  <message>
   <source>{n} more films.</source>
   <translation>{n} weitere Filme.</translation>
  </message>
 </context>
 <context>
  <name>AirPanel</name>
  <message>
   <source> °C</source>
   <translation> °C</translation>
  </message>
  <message>
   <source> % RH</source>
   <translation> % r. F.</translation>
  </message>
  <message>
   <source>today, from now on</source>
   <translation>heute, ab jetzt</translation>
  </message>
  <message>
   <source>every day, all day</source>
   <translation>täglich, ganztags</translation>
  </message>
  <message>
   <source>Whe&amp;re</source>
   <translation>&amp;Wo</translation>
  </message>
  <message>
   <source>Tem&amp;perature</source>
   <translation>&amp;Temperatur</translation>
  </message>
  <message>
   <source>Humidit&amp;y</source>
   <translation>Fe&amp;uchte</translation>
  </message>
  <message>
   <source>H&amp;olds</source>
   <translation>&amp;Gilt</translation>
  </message>
  <message>
   <source>Air</source>
   <translation>Luft</translation>
  </message>
 </context>
 <context>
  <name>AirStrip</name>
  <message>
   <source>Air at the bench</source>
   <translation>Luft am Arbeitsplatz</translation>
  </message>
  <message>
   <source>Change air</source>
   <translation>Luft ändern</translation>
  </message>
  <message>
   <source>Temperature and humidity (F3)</source>
   <translation>Temperatur und Feuchte (F3)</translation>
  </message>
  <message>
   <source>{temperature}  {humidity:.0f} % RH</source>
   <translation>{temperature}  {humidity:.0f} % r. F.</translation>
  </message>
  <message>
   <source>{day} {time}</source>
   <translation>{day} {time}</translation>
  </message>
  <message>
   <source>{undo} (Ctrl+Z)</source>
   <translation>{undo} (Strg+Z)</translation>
  </message>
 </context>
 <context>
  <name>AirbrushDialog</name>
  <message>
   <source>new airbrush</source>
   <translation>neue Airbrush</translation>
  </message>
  <message>
   <source>Minutes</source>
   <translation>Minuten</translation>
  </message>
  <message>
   <source>Millilitres</source>
   <translation>Milliliter</translation>
  </message>
  <message>
   <source>What asks for more is told as so many fills; usual are {usual:g} ml</source>
   <translation>Was mehr verlangt, wird als so viele Füllungen genannt; üblich sind {usual:g} ml</translation>
  </message>
  <message>
   <source>known</source>
   <translation>bekannt</translation>
  </message>
  <message>
   <source>The rest is overspray; usual are {usual:.0f} %, assumed</source>
   <translation>Der Rest ist Sprühnebel; üblich sind {usual:.0f} %, angenommen</translation>
  </message>
  <message>
   <source>known, not the usual</source>
   <translation>bekannt, abweichend vom Üblichen</translation>
  </message>
 </context>
 <context>
  <name>AnotherDialog</name>
  <message>
   <source>Another</source>
   <translation>Noch eins</translation>
  </message>
  <message>
   <source>&amp;As this one was painted</source>
   <translation>&amp;Wie dieses bemalt wurde</translation>
  </message>
  <message>
   <source>&amp;Name of the next</source>
   <translation>&amp;Name des nächsten</translation>
  </message>
  <message>
   <source>“Egret x 3” makes three: Egret 1 to Egret 3</source>
   <translation>„Reiher x 3“ ergibt drei: Reiher 1 bis Reiher 3</translation>
  </message>
  <message>
   <source>N&amp;ote on the order</source>
   <translation>N&amp;otiz zum Ablauf</translation>
  </message>
  <message>
   <source>&amp;Put it on the table</source>
   <translation>Auf den &amp;Tisch stellen</translation>
  </message>
  <message>
   <source>Nothing is in the logbook yet that could be an example.</source>
   <translation>Im Logbuch steht noch nichts, was ein Vorbild sein könnte.</translation>
  </message>
  <message>
   <source>Its real steps, minutes and coatings become an order; what was redone is left out.</source>
   <translation>Seine wirklichen Schritte, Minuten und Mittel werden ein Ablauf; was wiederholt wurde, bleibt weg.</translation>
  </message>
  <message>
   <source>{n} photo stays with it in the logbook.</source>
   <translation>{n} Foto bleibt im Logbuch bei diesem Modell.</translation>
  </message>
  <message>
   <source>{n} photos stay with it in the logbook.</source>
   <translation>{n} Fotos bleiben im Logbuch bei diesem Modell.</translation>
  </message>
  <message>
   <source>finish a step of a model first</source>
   <translation>erst einen Schritt eines Modells fertigstellen</translation>
  </message>
 </context>
 <context>
  <name>Archives</name>
  <message>
   <source>Export everything</source>
   <translation>Alles exportieren</translation>
  </message>
  <message>
   <source>Archives ({pattern})</source>
   <translation>Archive ({pattern})</translation>
  </message>
  <message>
   <source>Where shall the bench book lie?</source>
   <translation>Wo soll das Werkbuch liegen?</translation>
  </message>
  <message>
   <source>Bench books ({pattern})</source>
   <translation>Werkbücher ({pattern})</translation>
  </message>
  <message>
   <source>Working on the archive…</source>
   <translation>Archiv wird bearbeitet …</translation>
  </message>
  <message>
   <source>Everything is in {path}: the book with its history, and {n} photos.</source>
   <translation>Alles liegt in {path}: das Buch mit seiner Geschichte und {n} Fotos.</translation>
  </message>
  <message>
   <source>{m} photos of the logbook are missing beside the book.</source>
   <translation>Neben dem Buch fehlen {m} Fotos aus dem Logbuch.</translation>
  </message>
 </context>
 <context>
  <name>AwayDialog</name>
  <message>
   <source>&amp;First day</source>
   <translation>&amp;Erster Tag</translation>
  </message>
  <message>
   <source>&amp;Last day</source>
   <translation>Letzter Ta&amp;g</translation>
  </message>
  <message>
   <source>Extra sessions on these days stay.</source>
   <translation>Zusätzliche Sitzungen an diesen Tagen bleiben.</translation>
  </message>
 </context>
 <context>
  <name>BenchMode</name>
  <message>
   <source>Tackfree at the bench</source>
   <translation>Tackfree am Basteltisch</translation>
  </message>
  <message>
   <source>{job} is due at {time}; S begins it now.</source>
   <translation>{job} ist um {time} dran; S beginnt es jetzt.</translation>
  </message>
  <message>
   <source>Nothing is left to do</source>
   <translation>Es ist nichts mehr zu tun</translation>
  </message>
  <message>
   <source>Wait {length}</source>
   <translation>Warten: {length}</translation>
  </message>
  <message>
   <source>{time}: {work}</source>
   <translation>{time}: {work}</translation>
  </message>
  <message>
   <source>Then, {time}: {job}</source>
   <translation>Danach, {time}: {job}</translation>
  </message>
  <message>
   <source>{length} until then: A shows what else is ready</source>
   <translation>{length} bis dahin: A zeigt, was sonst bereit ist</translation>
  </message>
  <message>
   <source>{length} left to put away: the closing check is C</source>
   <translation>Noch {length} zum Aufräumen: C ist der Blick zum Schluss</translation>
  </message>
  <message>
   <source>fewer keys</source>
   <translation>weniger Tasten</translation>
  </message>
  <message>
   <source>all keys</source>
   <translation>alle Tasten</translation>
  </message>
  <message>
   <source>1–{n}</source>
   <translation>1–{n}</translation>
  </message>
  <message>
   <source>choose</source>
   <translation>wählen</translation>
  </message>
  <message>
   <source>Enter</source>
   <translation>Enter</translation>
  </message>
  <message>
   <source>take what is typed</source>
   <translation>Getipptes übernehmen</translation>
  </message>
  <message>
   <source>Space</source>
   <translation>Leertaste</translation>
  </message>
  <message>
   <source>Esc</source>
   <translation>Esc</translation>
  </message>
  <message>
   <source>back</source>
   <translation>zurück</translation>
  </message>
 </context>
 <context>
  <name>BenchTimeView</name>
  <message>
   <source>Weeks of bench time</source>
   <translation>Wochen mit Bastelzeit</translation>
  </message>
  <message>
   <source>Sessions</source>
   <translation>Sitzungen</translation>
  </message>
  <message>
   <source>Every week</source>
   <translation>Jede Woche</translation>
  </message>
  <message>
   <source>Away</source>
   <translation>Abwesend</translation>
  </message>
  <message>
   <source>Extra</source>
   <translation>Extra</translation>
  </message>
  <message>
   <source>Quiet hours</source>
   <translation>Ruhe</translation>
  </message>
  <message>
   <source>Daylight</source>
   <translation>Tageslicht</translation>
  </message>
  <message>
   <source>Bench time</source>
   <translation>Bastelzeit</translation>
  </message>
  <message>
   <source>Earlier</source>
   <translation>Früher</translation>
  </message>
  <message>
   <source>This week</source>
   <translation>Diese Woche</translation>
  </message>
  <message>
   <source>Later</source>
   <translation>Später</translation>
  </message>
  <message>
   <source>Away on this day</source>
   <translation>An diesem Tag abwesend</translation>
  </message>
  <message>
   <source>One more session…</source>
   <translation>Noch eine Sitzung …</translation>
  </message>
  <message>
   <source>Sessions of the weeks shown</source>
   <translation>Sitzungen der gezeigten Wochen</translation>
  </message>
  <message>
   <source>No bench time in these weeks.</source>
   <translation>Keine Bastelzeit in diesen Wochen.</translation>
  </message>
  <message>
   <source>Day</source>
   <translation>Tag</translation>
  </message>
  <message>
   <source>Hours</source>
   <translation>Stunden</translation>
  </message>
  <message>
   <source>Length</source>
   <translation>Länge</translation>
  </message>
  <message>
   <source>Planned</source>
   <translation>Verplant</translation>
  </message>
  <message>
   <source>Free</source>
   <translation>Frei</translation>
  </message>
  <message>
   <source>Quiet</source>
   <translation>Ruhe</translation>
  </message>
  <message>
   <source>Note</source>
   <translation>Notiz</translation>
  </message>
  <message>
   <source>No bench time comes every week.</source>
   <translation>Keine Bastelzeit kehrt jede Woche wieder.</translation>
  </message>
  <message>
   <source>No quiet hours: the compressor may run at any time.</source>
   <translation>Keine Ruhezeiten: Der Kompressor darf jederzeit laufen.</translation>
  </message>
  <message>
   <source>No daylight given: a spray can outdoors is never held up.</source>
   <translation>Kein Tageslicht angegeben: Eine Sprühdose im Freien wird nie aufgehalten.</translation>
  </message>
  <message>
   <source>Bench time every week</source>
   <translation>Bastelzeit jede Woche</translation>
  </message>
  <message>
   <source>Daylight hours</source>
   <translation>Stunden mit Tageslicht</translation>
  </message>
  <message>
   <source>On</source>
   <translation>Am</translation>
  </message>
  <message>
   <source>From</source>
   <translation>Von</translation>
  </message>
  <message>
   <source>Until</source>
   <translation>Bis</translation>
  </message>
  <message>
   <source>Beginning on</source>
   <translation>Beginnend am</translation>
  </message>
  <message>
   <source>People</source>
   <translation>Personen</translation>
  </message>
  <message>
   <source>Add…</source>
   <translation>Hinzufügen …</translation>
  </message>
  <message>
   <source>Change…</source>
   <translation>Ändern …</translation>
  </message>
  <message>
   <source>Remove</source>
   <translation>Entfernen</translation>
  </message>
  <message>
   <source>Days away</source>
   <translation>Tage abwesend</translation>
  </message>
  <message>
   <source>No day away. What comes every week begins on none of the days named here.</source>
   <translation>Kein Tag abwesend. An den hier genannten Tagen beginnt nichts von dem, was jede Woche wiederkehrt.</translation>
  </message>
  <message>
   <source>First day</source>
   <translation>Erster Tag</translation>
  </message>
  <message>
   <source>Last day</source>
   <translation>Letzter Tag</translation>
  </message>
  <message>
   <source>Days</source>
   <translation>Tage</translation>
  </message>
  <message>
   <source>Add holidays…</source>
   <translation>Urlaub eintragen …</translation>
  </message>
  <message>
   <source>Be back</source>
   <translation>Doch da sein</translation>
  </message>
  <message>
   <source>Extra sessions</source>
   <translation>Zusätzliche Sitzungen</translation>
  </message>
  <message>
   <source>No extra session.</source>
   <translation>Keine zusätzliche Sitzung.</translation>
  </message>
  <message>
   <source>No bench time in these four weeks.</source>
   <translation>Keine Bastelzeit in diesen vier Wochen.</translation>
  </message>
  <message>
   <source>{first} to {last}: {count}, {length} in all, {planned} planned</source>
   <translation>{first} bis {last}: {count}, zusammen {length}, davon {planned} verplant</translation>
  </message>
  <message>
   <source>1 session</source>
   <translation>1 Sitzung</translation>
  </message>
  <message>
   <source>{n} sessions</source>
   <translation>{n} Sitzungen</translation>
  </message>
  <message>
   <source>Be back on this day</source>
   <translation>An diesem Tag doch da sein</translation>
  </message>
 </context>
 <context>
  <name>BookCopies</name>
  <message>
   <source>Copies of the book</source>
   <translation>Kopien des Buchs</translation>
  </message>
  <message>
   <source>Copies, the newest first</source>
   <translation>Kopien, die neueste zuerst</translation>
  </message>
  <message>
   <source>&amp;Make a copy now</source>
   <translation>Jetzt eine Kopie &amp;anlegen</translation>
  </message>
  <message>
   <source>&amp;Restore this copy</source>
   <translation>Diese Kopie &amp;wiederherstellen</translation>
  </message>
  <message>
   <source>A copy is made on each day of use, before an upgrade and before a restore. Restoring can be undone.</source>
   <translation>Eine Kopie entsteht an jedem Tag mit Änderungen, vor einer Umstellung und vor dem Wiederherstellen. Wiederherstellen lässt sich rückgängig machen.</translation>
  </message>
  <message>
   <source>Reading the copies…</source>
   <translation>Kopien werden gelesen …</translation>
  </message>
  <message>
   <source>There is no copy yet.</source>
   <translation>Es gibt noch keine Kopie.</translation>
  </message>
 </context>
 <context>
  <name>BrakeDialog</name>
  <message>
   <source>Wet film</source>
   <translation>Nasser Film</translation>
  </message>
  <message>
   <source>Window closed</source>
   <translation>Fenster geschlossen</translation>
  </message>
  <message>
   <source>&amp;Wait, {until}</source>
   <translation>&amp;Warten, {until}</translation>
  </message>
  <message>
   <source>&amp;Wait</source>
   <translation>&amp;Warten</translation>
  </message>
  <message>
   <source>I waited and it is &amp;dry</source>
   <translation>Ich habe gewartet, er ist &amp;trocken</translation>
  </message>
  <message>
   <source>Noted as a look: it sets the pace of this film</source>
   <translation>Wird als Prüfung vermerkt: danach richtet sich dieser Film</translation>
  </message>
  <message>
   <source>&amp;Note it all the same</source>
   <translation>&amp;Trotzdem vermerken</translation>
  </message>
  <message>
   <source>&amp;Begin all the same</source>
   <translation>Trotzdem &amp;beginnen</translation>
  </message>
  <message>
   <source>It stands marked in timeline, logbook and record</source>
   <translation>Es steht markiert in Zeitstrahl, Logbuch und Baubericht</translation>
  </message>
 </context>
 <context>
  <name>BuildModel</name>
  <message>
   <source>What</source>
   <translation>Was</translation>
  </message>
  <message>
   <source>With</source>
   <translation>Womit</translation>
  </message>
  <message>
   <source>At the bench</source>
   <translation>Am Tisch</translation>
  </message>
  <message>
   <source>Waits for</source>
   <translation>Wartet auf</translation>
  </message>
  <message>
   <source>Can wait</source>
   <translation>Kann warten</translation>
  </message>
 </context>
 <context>
  <name>BuildTree</name>
  <message>
   <source>Models, parts and steps, in working order</source>
   <translation>Modelle, Teile und Schritte in der Reihenfolge der Arbeit</translation>
  </message>
 </context>
 <context>
  <name>BuildView</name>
  <message>
   <source>Build</source>
   <translation>Bauplan</translation>
  </message>
  <message>
   <source>Nothing is on the table yet. Begin a project here, or answer four short questions in “Tonight” (Ctrl+1).</source>
   <translation>Noch steht nichts auf dem Tisch. Beginnen Sie hier ein Projekt, oder beantworten Sie vier kurze Fragen unter „Heute Abend“ (Strg+1).</translation>
  </message>
  <message>
   <source>models with these words, also of a step</source>
   <translation>Modelle mit diesen Wörtern, auch in einem Schritt</translation>
  </message>
  <message>
   <source>Show only</source>
   <translation>Nur zeigen</translation>
  </message>
  <message>
   <source>Show on&amp;ly</source>
   <translation>Nu&amp;r zeigen</translation>
  </message>
  <message>
   <source>More</source>
   <translation>Mehr</translation>
  </message>
 </context>
 <context>
  <name>BuyPanel</name>
  <message>
   <source>To buy</source>
   <translation>Zu kaufen</translation>
  </message>
  <message>
   <source>Nothing is planned yet.</source>
   <translation>Noch nichts ist geplant.</translation>
  </message>
  <message>
   <source>What runs out first is on top.</source>
   <translation>Was zuerst ausgeht, steht oben.</translation>
  </message>
  <message>
   <source>The stock is enough.</source>
   <translation>Der Vorrat reicht.</translation>
  </message>
  <message>
   <source>buy {amount}</source>
   <translation>{amount} kaufen</translation>
  </message>
  <message>
   <source>Bought</source>
   <translation>Gekauft</translation>
  </message>
  <message>
   <source>Bought {amount} of {name}</source>
   <translation>{amount} {name} gekauft</translation>
  </message>
  <message>
   <source>not planned yet</source>
   <translation>noch nicht geplant</translation>
  </message>
  <message>
   <source>runs out {when}</source>
   <translation>geht aus: {when}</translation>
  </message>
 </context>
 <context>
  <name>CardDialog</name>
  <message>
   <source>card 1</source>
   <translation>Karte 1</translation>
  </message>
 </context>
 <context>
  <name>CardFrame</name>
  <message>
   <source>Not tonight…</source>
   <translation>Nicht heute …</translation>
  </message>
  <message>
   <source>Put this off to a later session (N)</source>
   <translation>Auf eine spätere Sitzung verschieben (N)</translation>
  </message>
  <message>
   <source>Why here?</source>
   <translation>Warum hier?</translation>
  </message>
  <message>
   <source>All done</source>
   <translation>Alles fertig</translation>
  </message>
  <message>
   <source>Note all of this card as done now (Ctrl+Enter)</source>
   <translation>Alles auf dieser Karte jetzt als fertig eintragen (Strg+Enter)</translation>
  </message>
  <message>
   <source>{start} – {end}</source>
   <translation>{start} – {end}</translation>
  </message>
  <message>
   <source>{done} of {all} done</source>
   <translation>{done} von {all} erledigt</translation>
  </message>
  <message>
   <source>{work}: places of {models}</source>
   <translation>{work}: Stellen von {models}</translation>
  </message>
  <message>
   <source>As above: {cautions}</source>
   <translation>Wie oben: {cautions}</translation>
  </message>
  <message>
   <source>{caution}
Source: {source}</source>
   <translation>{caution}
Quelle: {source}</translation>
  </message>
  <message>
   <source>All done: {work}</source>
   <translation>Alles fertig: {work}</translation>
  </message>
  <message>
   <source>Fold this card</source>
   <translation>Diese Karte einklappen</translation>
  </message>
  <message>
   <source>Show this card</source>
   <translation>Diese Karte zeigen</translation>
  </message>
  <message>
   <source>Why here? {work}</source>
   <translation>Warum hier? {work}</translation>
  </message>
  <message>
   <source>Not tonight: {work}</source>
   <translation>Nicht heute: {work}</translation>
  </message>
  <message>
   <source>{time} {model}: {why}</source>
   <translation>{time} {model}: {why}</translation>
  </message>
 </context>
 <context>
  <name>ChancePanel</name>
  <message>
   <source>What would help</source>
   <translation>Was helfen würde</translation>
  </message>
  <message>
   <source>&amp;Look for what would help</source>
   <translation>&amp;Suchen, was helfen würde</translation>
  </message>
  <message>
   <source>&amp;Do it</source>
   <translation>&amp;Machen</translation>
  </message>
  <message>
   <source>What moves the date most</source>
   <translation>Was den Termin am meisten verschiebt</translation>
  </message>
  <message>
   <source>How sure the dates are</source>
   <translation>Wie sicher die Termine sind</translation>
  </message>
  <message>
   <source>The runs of this plan are being drawn.</source>
   <translation>Die Läufe dieses Plans werden gerechnet.</translation>
  </message>
  <message>
   <source>Not all of it is ever finished.</source>
   <translation>Nicht alles davon wird je fertig.</translation>
  </message>
  <message>
   <source>{name}: {told}</source>
   <translation>{name}: {told}</translation>
  </message>
  <message>
   <source>never</source>
   <translation>nie</translation>
  </message>
  <message>
   <source>four in five by {day}</source>
   <translation>vier von fünf bis {day}</translation>
  </message>
  <message>
   <source>· {name}: {told}</source>
   <translation>· {name}: {told}</translation>
  </message>
  <message>
   <source>&amp;Stop looking</source>
   <translation>Nicht weiter &amp;suchen</translation>
  </message>
  <message>
   <source>{n} of {all}: {name}</source>
   <translation>{n} von {all}: {name}</translation>
  </message>
  <message>
   <source>Nothing that was tried would help.</source>
   <translation>Nichts davon, was versucht wurde, würde helfen.</translation>
  </message>
 </context>
 <context>
  <name>ChanceRunner</name>
  <message>
   <source>a surer order of the same work was taken</source>
   <translation>eine sicherere Reihenfolge derselben Arbeit wurde genommen</translation>
  </message>
 </context>
 <context>
  <name>ChangeForm</name>
  <message>
   <source> °C</source>
   <translation> °C</translation>
  </message>
  <message>
   <source>Temperature</source>
   <translation>Temperatur</translation>
  </message>
  <message>
   <source>Humidity</source>
   <translation>Feuchte</translation>
  </message>
  <message>
   <source> % RH</source>
   <translation> % r. F.</translation>
  </message>
 </context>
 <context>
  <name>Chips</name>
  <message>
   <source>{what}: {word}</source>
   <translation>{what}: {word}</translation>
  </message>
 </context>
 <context>
  <name>Choose</name>
  <message>
   <source>type a part of the name</source>
   <translation>einen Teil des Namens eingeben</translation>
  </message>
  <message>
   <source>Narrow the list</source>
   <translation>Die Liste eingrenzen</translation>
  </message>
 </context>
 <context>
  <name>ClosingDialog</name>
  <message>
   <source>Close the evening</source>
   <translation>Den Abend schließen</translation>
  </message>
  <message>
   <source>C&amp;lose the evening</source>
   <translation>Den Abend &amp;schließen</translation>
  </message>
  <message>
   <source>Go on</source>
   <translation>Weitermachen</translation>
  </message>
  <message>
   <source>Nothing was noted as done yet.</source>
   <translation>Noch ist nichts als erledigt vermerkt.</translation>
  </message>
  <message>
   <source>{work} and {n} more</source>
   <translation>{work} und {n} weitere</translation>
  </message>
  <message>
   <source>Done</source>
   <translation>Erledigt</translation>
  </message>
  <message>
   <source>And this?</source>
   <translation>Und das?</translation>
  </message>
  <message>
   <source>A photo of each</source>
   <translation>Ein Foto von jedem</translation>
  </message>
  <message>
   <source>Left in cup and jar</source>
   <translation>Übrig in Becher und Glas</translation>
  </message>
  <message>
   <source>How do the films feel?</source>
   <translation>Wie fühlen sich die Filme an?</translation>
  </message>
  <message>
   <source>done</source>
   <translation>erledigt</translation>
  </message>
  <message>
   <source>under way</source>
   <translation>im Gang</translation>
  </message>
  <message>
   <source>put back</source>
   <translation>zurückgestellt</translation>
  </message>
  <message>
   <source>not begun</source>
   <translation>nicht begonnen</translation>
  </message>
  <message>
   <source>is clean</source>
   <translation>ist sauber</translation>
  </message>
  <message>
   <source>{airbrush}: {coating}</source>
   <translation>{airbrush}: {coating}</translation>
  </message>
  <message>
   <source> ml</source>
   <translation> ml</translation>
  </message>
  <message>
   <source>nothing kept</source>
   <translation>nichts aufgehoben</translation>
  </message>
  <message>
   <source>{coating}, kept in a jar</source>
   <translation>{coating}, im Glas aufgehoben</translation>
  </message>
  <message>
   <source>wet</source>
   <translation>nass</translation>
  </message>
  <message>
   <source>not felt; likely {state}</source>
   <translation>nicht befühlt; wohl {state}</translation>
  </message>
  <message>
   <source>{coating} on {model} ({parts})</source>
   <translation>{coating} auf {model} ({parts})</translation>
  </message>
  <message>
   <source>Next: nothing is planned.</source>
   <translation>Als Nächstes: nichts ist geplant.</translation>
  </message>
  <message>
   <source>Next: {time}, {work}</source>
   <translation>Als Nächstes: {time}, {work}</translation>
  </message>
 </context>
 <context>
  <name>CoatLine</name>
  <message>
   <source>Colour {n}</source>
   <translation>Farbe {n}</translation>
  </message>
  <message>
   <source>Coats of colour {n}</source>
   <translation>Schichten von Farbe {n}</translation>
  </message>
  <message>
   <source>Thin coats, each dried before the next</source>
   <translation>Dünne Schichten, jede vor der nächsten getrocknet</translation>
  </message>
  <message>
   <source>covers the usual share</source>
   <translation>deckt den üblichen Anteil</translation>
  </message>
  <message>
   <source>covers </source>
   <translation>deckt </translation>
  </message>
  <message>
   <source>Share covered by colour {n}</source>
   <translation>Von Farbe {n} gedeckter Anteil</translation>
  </message>
  <message>
   <source>How much of its places it covers; usual for the stage</source>
   <translation>Wie viel seiner Stellen sie deckt; üblich für den Arbeitsschritt</translation>
  </message>
  <message>
   <source>Remove colour {n}</source>
   <translation>Farbe {n} entfernen</translation>
  </message>
 </context>
 <context>
  <name>CoatPlacesModel</name>
  <message>
   <source>no coat</source>
   <translation>keine Schicht</translation>
  </message>
 </context>
 <context>
  <name>CoatPlacesTable</name>
  <message>
   <source>Which place gets which coat</source>
   <translation>Welche Stelle welche Schicht bekommt</translation>
  </message>
 </context>
 <context>
  <name>CoatingDialog</name>
  <message>
   <source>new coating</source>
   <translation>neues Beschichtungsmittel</translation>
  </message>
  <message>
   <source>limited</source>
   <translation>begrenzt</translation>
  </message>
  <message>
   <source>Label</source>
   <translation>Etikett</translation>
  </message>
  <message>
   <source>Drying times</source>
   <translation>Trocknungszeiten</translation>
  </message>
  <message>
   <source>At 23 °C and 50 % RH, for the dry film of one coat. What is not ticked goes by the family.</source>
   <translation>Bei 23 °C und 50 % r. F., für den trockenen Film einer Schicht. Was nicht angekreuzt ist, richtet sich nach der Familie.</translation>
  </message>
  <message>
   <source>Recoat</source>
   <translation>Überlackieren</translation>
  </message>
  <message>
   <source>Bottle</source>
   <translation>Flasche</translation>
  </message>
  <message>
   <source>opened on</source>
   <translation>geöffnet am</translation>
  </message>
  <message>
   <source>counted</source>
   <translation>gezählt</translation>
  </message>
  <message>
   <source>Film</source>
   <translation>Film</translation>
  </message>
  <message>
   <source>as its hue usually does</source>
   <translation>wie ihr Farbton es meist tut</translation>
  </message>
  <message>
   <source>its own</source>
   <translation>eigener</translation>
  </message>
 </context>
 <context>
  <name>CoatingsPage</name>
  <message>
   <source>name, family, finish, what it is for</source>
   <translation>Name, Familie, Glanzgrad, wofür</translation>
  </message>
  <message>
   <source>Show only</source>
   <translation>Nur zeigen</translation>
  </message>
  <message>
   <source>Coatings as bottles</source>
   <translation>Mittel als Flaschen</translation>
  </message>
  <message>
   <source>As a list</source>
   <translation>Als Liste</translation>
  </message>
  <message>
   <source>Every figure in columns, or bottles as tiles</source>
   <translation>Alle Zahlen in Spalten, oder Flaschen als Kacheln</translation>
  </message>
  <message>
   <source>How the chosen coating dries</source>
   <translation>Wie das gewählte Mittel trocknet</translation>
  </message>
  <message>
   <source>Coatings by family</source>
   <translation>Mittel nach Familien</translation>
  </message>
  <message>
   <source>State</source>
   <translation>Zustand</translation>
  </message>
  <message>
   <source>As stated</source>
   <translation>Wie angegeben</translation>
  </message>
  <message>
   <source>As learned</source>
   <translation>Wie gelernt</translation>
  </message>
  <message>
   <source>Source</source>
   <translation>Quelle</translation>
  </message>
  <message>
   <source>Show on&amp;ly</source>
   <translation>&amp;Nur zeigen</translation>
  </message>
  <message>
   <source>Add coating…</source>
   <translation>Mittel hinzufügen …</translation>
  </message>
  <message>
   <source>Change…</source>
   <translation>Ändern …</translation>
  </message>
  <message>
   <source>Count…</source>
   <translation>Zählen …</translation>
  </message>
  <message>
   <source>Bought…</source>
   <translation>Gekauft …</translation>
  </message>
  <message>
   <source>Drying card…</source>
   <translation>Trockenkarte…</translation>
  </message>
  <message>
   <source>Remove</source>
   <translation>Entfernen</translation>
  </message>
  <message>
   <source>No coating in the book yet. Add the bottles that you own.</source>
   <translation>Noch kein Mittel im Buch. Tragen Sie die Flaschen ein, die Sie besitzen.</translation>
  </message>
  <message>
   <source>No coating has these words.</source>
   <translation>Kein Mittel hat diese Wörter.</translation>
  </message>
  <message>
   <source>A thinner leaves no film.</source>
   <translation>Eine Verdünnung hinterlässt keinen Film.</translation>
  </message>
  <message>
   <source>To each state at 23 °C and 50 % RH, {film:g} µm dry.</source>
   <translation>Bis zu jedem Zustand bei 23 °C und 50 % r. F., {film:g} µm trocken.</translation>
  </message>
  <message>
   <source>Learned: takes {factor:.2f} times as long as stated.</source>
   <translation>Gelernt: braucht {factor:.2f}-mal so lang wie angegeben.</translation>
  </message>
  <message>
   <source> ml</source>
   <translation> ml</translation>
  </message>
  <message>
   <source>By the book, {amount} of {name} is left.</source>
   <translation>Laut Buch sind von {name} noch {amount} übrig.</translation>
  </message>
  <message>
   <source>Count a bottle</source>
   <translation>Flasche zählen</translation>
  </message>
  <message>
   <source>&amp;There are</source>
   <translation>&amp;Es sind</translation>
  </message>
  <message>
   <source>{name}, in bottles of {amount:g} ml.</source>
   <translation>{name}, in Flaschen zu {amount:g} ml.</translation>
  </message>
  <message>
   <source>Bought</source>
   <translation>Gekauft</translation>
  </message>
  <message>
   <source>&amp;Bottles</source>
   <translation>&amp;Flaschen</translation>
  </message>
 </context>
 <context>
  <name>CoatsField</name>
  <message>
   <source>Add a colour</source>
   <translation>Farbe hinzufügen</translation>
  </message>
 </context>
 <context>
  <name>CoatsModel</name>
  <message>
   <source>Coat</source>
   <translation>Schicht</translation>
  </message>
  <message>
   <source>When</source>
   <translation>Wann</translation>
  </message>
  <message>
   <source>On the one below</source>
   <translation>Auf der darunter</translation>
  </message>
  <message>
   <source>Stage</source>
   <translation>Arbeitsschritt</translation>
  </message>
 </context>
 <context>
  <name>ColourDialog</name>
  <message>
   <source>new colour</source>
   <translation>neue Farbe</translation>
  </message>
  <message>
   <source>– asked each time –</source>
   <translation>– jedes Mal gefragt –</translation>
  </message>
 </context>
 <context>
  <name>ColoursField</name>
  <message>
   <source>{name} (starter stock)</source>
   <translation>{name} (Anfangsvorrat)</translation>
  </message>
  <message>
   <source>– choose –</source>
   <translation>– wählen –</translation>
  </message>
 </context>
 <context>
  <name>Commands</name>
  <message>
   <source>&amp;New book…</source>
   <translation>&amp;Neues Buch …</translation>
  </message>
  <message>
   <source>&amp;Open book…</source>
   <translation>Buch ö&amp;ffnen …</translation>
  </message>
  <message>
   <source>&amp;Import project file…</source>
   <translation>Projektdatei &amp;importieren …</translation>
  </message>
  <message>
   <source>&amp;Export project file…</source>
   <translation>Projektdatei &amp;exportieren …</translation>
  </message>
  <message>
   <source>&amp;Print tonight…</source>
   <translation>Heute Abend &amp;drucken…</translation>
  </message>
  <message>
   <source>&amp;Quit</source>
   <translation>&amp;Beenden</translation>
  </message>
  <message>
   <source>&amp;Undo</source>
   <translation>&amp;Rückgängig</translation>
  </message>
  <message>
   <source>&amp;Redo</source>
   <translation>&amp;Wiederholen</translation>
  </message>
  <message>
   <source>&amp;Last edits…</source>
   <translation>&amp;Letzte Änderungen …</translation>
  </message>
  <message>
   <source>&amp;Copies of the book…</source>
   <translation>&amp;Kopien des Buchs …</translation>
  </message>
  <message>
   <source>&amp;Everything, in one archive…</source>
   <translation>Alles &amp;in einem Archiv …</translation>
  </message>
  <message>
   <source>&amp;About Tackfree</source>
   <translation>&amp;Über Tackfree</translation>
  </message>
  <message>
   <source>&amp;Keys</source>
   <translation>&amp;Tasten</translation>
  </message>
  <message>
   <source>This &amp;page</source>
   <translation>Diese &amp;Seite</translation>
  </message>
  <message>
   <source>&amp;Words</source>
   <translation>&amp;Wörter</translation>
  </message>
  <message>
   <source>Take the &amp;better plan</source>
   <translation>Den &amp;besseren Plan nehmen</translation>
  </message>
  <message>
   <source>&amp;Bench mode</source>
   <translation>&amp;Basteltisch-Ansicht</translation>
  </message>
  <message>
   <source>I &amp;did something else…</source>
   <translation>Ich habe etwas an&amp;deres gemacht …</translation>
  </message>
  <message>
   <source>An &amp;hour more</source>
   <translation>Eine &amp;Stunde mehr</translation>
  </message>
  <message>
   <source>&amp;Stop for tonight</source>
   <translation>Schl&amp;uss für heute Abend</translation>
  </message>
  <message>
   <source>&amp;Free time…</source>
   <translation>F&amp;reie Zeit …</translation>
  </message>
  <message>
   <source>&amp;Close the evening…</source>
   <translation>Den Abend s&amp;chließen …</translation>
  </message>
  <message>
   <source>This evening is &amp;lost</source>
   <translation>Dieser Abend &amp;fällt aus</translation>
  </message>
  <message>
   <source>&amp;Take back the last</source>
   <translation>Das Letzte &amp;zurücknehmen</translation>
  </message>
  <message>
   <source>Change the a&amp;ir</source>
   <translation>Luft &amp;ändern</translation>
  </message>
  <message>
   <source>Days &amp;off…</source>
   <translation>Freie &amp;Tage …</translation>
  </message>
  <message>
   <source>&amp;More bench time…</source>
   <translation>&amp;Mehr Bastelzeit …</translation>
  </message>
  <message>
   <source>Inspecto&amp;r</source>
   <translation>&amp;Inspektor</translation>
  </message>
  <message>
   <source>&amp;Next page of the room</source>
   <translation>Nä&amp;chste Seite des Raums</translation>
  </message>
  <message>
   <source>&amp;Page before it</source>
   <translation>Seite &amp;davor</translation>
  </message>
  <message>
   <source>B&amp;ack to the page before</source>
   <translation>Zurüc&amp;k zur Seite davor</translation>
  </message>
  <message>
   <source>&amp;Follow the system</source>
   <translation>Dem S&amp;ystem folgen</translation>
  </message>
  <message>
   <source>L&amp;ight</source>
   <translation>Helles Desi&amp;gn</translation>
  </message>
  <message>
   <source>Dar&amp;k</source>
   <translation>Dun&amp;kles Design</translation>
  </message>
  <message>
   <source>Changes at the next start.</source>
   <translation>Gilt ab dem nächsten Start.</translation>
  </message>
  <message>
   <source>&amp;File</source>
   <translation>&amp;Datei</translation>
  </message>
  <message>
   <source>E&amp;xport</source>
   <translation>E&amp;xport</translation>
  </message>
  <message>
   <source>&amp;Edit</source>
   <translation>&amp;Bearbeiten</translation>
  </message>
  <message>
   <source>M&amp;odels</source>
   <translation>M&amp;odelle</translation>
  </message>
  <message>
   <source>&amp;View</source>
   <translation>Ansi&amp;cht</translation>
  </message>
  <message>
   <source>Pa&amp;ges</source>
   <translation>S&amp;eiten</translation>
  </message>
  <message>
   <source>L&amp;anguage</source>
   <translation>Spra&amp;che</translation>
  </message>
  <message>
   <source>Eve&amp;ning</source>
   <translation>Ab&amp;end</translation>
  </message>
  <message>
   <source>&amp;Help</source>
   <translation>&amp;Hilfe</translation>
  </message>
  <message>
   <source>&amp;Undo {edit}</source>
   <translation>&amp;Rückgängig: {edit}</translation>
  </message>
  <message>
   <source>&amp;Redo {edit}</source>
   <translation>&amp;Wiederholen: {edit}</translation>
  </message>
 </context>
 <context>
  <name>ConsumableDialog</name>
  <message>
   <source>new consumable</source>
   <translation>neues Verbrauchsmaterial</translation>
  </message>
  <message>
   <source>pieces</source>
   <translation>Stück</translation>
  </message>
 </context>
 <context>
  <name>CopyOffers</name>
  <message>
   <source>Save what can still be read of it…</source>
   <translation>Speichern, was davon noch lesbar ist …</translation>
  </message>
 </context>
 <context>
  <name>CoursePlot</name>
  <message>
   <source>No coating is chosen.</source>
   <translation>Kein Mittel gewählt.</translation>
  </message>
  <message>
   <source>{state} {time}</source>
   <translation>{state} {time}</translation>
  </message>
  <message>
   <source>never</source>
   <translation>nie</translation>
  </message>
  <message>
   <source>recoat window closes {time}</source>
   <translation>Überlackierfenster schließt {time}</translation>
  </message>
  <message>
   <source>{coating}: {states}</source>
   <translation>{coating}: {states}</translation>
  </message>
 </context>
 <context>
  <name>CrossSection</name>
  <message>
   <source>Cross-section of {place}; the table below says the same</source>
   <translation>Querschnitt von {place}; die Tabelle darunter sagt dasselbe</translation>
  </message>
 </context>
 <context>
  <name>CurveWidget</name>
  <message>
   <source>How many of all runs are finished by when</source>
   <translation>Wie viele aller Läufe bis wann fertig sind</translation>
  </message>
  <message>
   <source>{percent} % by {day}</source>
   <translation>{percent} % bis {day}</translation>
  </message>
 </context>
 <context>
  <name>DamagedBook</name>
  <message>
   <source>Open a bench book</source>
   <translation>Werkbuch öffnen</translation>
  </message>
 </context>
 <context>
  <name>DatesDialog</name>
  <message>
   <source>Dates and priorities</source>
   <translation>Termine und Vorrang</translation>
  </message>
  <message>
   <source>Close</source>
   <translation>Schließen</translation>
  </message>
  <message>
   <source>A model without a date counts by that of its project. Weight says how much a day late of it weighs against a day of another.</source>
   <translation>Ein Modell ohne Termin zählt nach dem seines Projekts. Das Gewicht sagt, wie schwer ein Tag Verspätung gegen den eines anderen wiegt.</translation>
  </message>
  <message>
   <source>Model</source>
   <translation>Modell</translation>
  </message>
  <message>
   <source>Finish by</source>
   <translation>Fertig bis</translation>
  </message>
  <message>
   <source>Weight</source>
   <translation>Gewicht</translation>
  </message>
  <message>
   <source>Early</source>
   <translation>Früh</translation>
  </message>
  <message>
   <source>By the plan</source>
   <translation>Laut Plan</translation>
  </message>
  <message>
   <source>no date</source>
   <translation>kein Termin</translation>
  </message>
  <message>
   <source>{model}: finish by</source>
   <translation>{model}: fertig bis</translation>
  </message>
  <message>
   <source>{model}: weight</source>
   <translation>{model}: Gewicht</translation>
  </message>
  <message>
   <source>{model}: as early as it can be</source>
   <translation>{model}: so früh wie möglich</translation>
  </message>
  <message>
   <source>As early as it can be; others fill the gaps</source>
   <translation>So früh wie möglich; andere füllen die Lücken</translation>
  </message>
  <message>
   <source>“{text}” is no day; write it as 24.12. or 2031-12-24</source>
   <translation>„{text}“ ist kein Tag; als 24.12. oder 2031-12-24 schreiben</translation>
  </message>
  <message>
   <source>has no place</source>
   <translation>hat keinen Platz</translation>
  </message>
 </context>
 <context>
  <name>DayActions</name>
  <message>
   <source>S&amp;kip {day}</source>
   <translation>{day} &amp;auslassen</translation>
  </message>
  <message>
   <source>{day} an &amp;hour longer</source>
   <translation>{day} eine &amp;Stunde länger</translation>
  </message>
  <message>
   <source>&amp;Add a session…</source>
   <translation>Sitzung &amp;hinzufügen …</translation>
  </message>
 </context>
 <context>
  <name>DayCurve</name>
  <message>
   <source>Course of the air over the day</source>
   <translation>Verlauf der Luft über den Tag</translation>
  </message>
 </context>
 <context>
  <name>Details</name>
  <message>
   <source>Chosen piece of work</source>
   <translation>Gewählte Arbeit</translation>
  </message>
  <message>
   <source>Choose a piece of work to see why it is there.</source>
   <translation>Wählen Sie eine Arbeit, um zu sehen, warum sie dort ist.</translation>
  </message>
  <message>
   <source>and {day} {start}–{end}</source>
   <translation>und {day} {start}–{end}</translation>
  </message>
  <message>
   <source>No slack: any delay here delays the whole model.</source>
   <translation>Kein Puffer: Jede Verzögerung hier verzögert das ganze Modell.</translation>
  </message>
  <message>
   <source>Slack: {length}, counting drying alone.</source>
   <translation>Puffer: {length}, allein vom Trocknen her.</translation>
  </message>
  <message>
   <source>{work}: no place yet</source>
   <translation>{work}: noch ohne Platz</translation>
  </message>
  <message>
   <source>{work}, {time}</source>
   <translation>{work}, {time}</translation>
  </message>
  <message>
   <source>{work} has no place in the plan: {why}.</source>
   <translation>{work} hat keinen Platz im Plan: {why}.</translation>
  </message>
  <message>
   <source>This piece of work has no place in the plan.</source>
   <translation>Diese Arbeit hat keinen Platz im Plan.</translation>
  </message>
  <message>
   <source>What waits for it</source>
   <translation>Was darauf wartet</translation>
  </message>
  <message>
   <source>{why} ({source})</source>
   <translation>{why} ({source})</translation>
  </message>
 </context>
 <context>
  <name>DifferencesModel</name>
  <message>
   <source>What</source>
   <translation>Was</translation>
  </message>
  <message>
   <source>Name</source>
   <translation>Name</translation>
  </message>
  <message>
   <source>To be done</source>
   <translation>Noch zu tun</translation>
  </message>
 </context>
 <context>
  <name>DryingCardDialog</name>
  <message>
   <source>Drying card: {coating}</source>
   <translation>Trockenkarte: {coating}</translation>
  </message>
  <message>
   <source>Coat a scrap along with the model and try it when the card asks: two minutes, on evenings that you have anyway. It tells how this very bottle dries in your room.</source>
   <translation>Ein Reststück mit dem Modell lackieren und prüfen, wenn die Karte fragt: zwei Minuten, an Abenden, die es ohnehin gibt. Sie sagt, wie genau diese Flasche in deinem Raum trocknet.</translation>
  </message>
  <message>
   <source>Trials of the card</source>
   <translation>Proben der Karte</translation>
  </message>
  <message>
   <source>It dries &amp;in</source>
   <translation>Sie trocknet &amp;in</translation>
  </message>
  <message>
   <source>I coated a &amp;card just now</source>
   <translation>Gerade eine &amp;Karte lackiert</translation>
  </message>
  <message>
   <source>It &amp;held</source>
   <translation>Sie &amp;hielt</translation>
  </message>
  <message>
   <source>&amp;Not yet</source>
   <translation>&amp;Noch nicht</translation>
  </message>
  <message>
   <source>&amp;Use it for this bottle</source>
   <translation>Für diese Flasche ü&amp;bernehmen</translation>
  </message>
  <message>
   <source>&amp;Throw the card away</source>
   <translation>Karte &amp;wegwerfen</translation>
  </message>
  <message>
   <source>Trial</source>
   <translation>Probe</translation>
  </message>
  <message>
   <source>Likely stands it</source>
   <translation>Hält wohl</translation>
  </message>
  <message>
   <source>Surely</source>
   <translation>Sicher</translation>
  </message>
  <message>
   <source>It said</source>
   <translation>Sie sagte</translation>
  </message>
  <message>
   <source>Try it</source>
   <translation>Prüfen</translation>
  </message>
  <message>
   <source>Holds then in {percent} of 100 cases, by all that is known</source>
   <translation>Hält dann in {percent} von 100 Fällen, nach allem, was bekannt ist</translation>
  </message>
  <message>
   <source>Close</source>
   <translation>Schließen</translation>
  </message>
  <message>
   <source>Coated {time}, dries in: {place}</source>
   <translation>Lackiert {time}, trocknet in: {place}</translation>
  </message>
  <message>
   <source>never in this air</source>
   <translation>nie in dieser Luft</translation>
  </message>
 </context>
 <context>
  <name>DryingView</name>
  <message>
   <source>Still &amp;wet</source>
   <translation>Noch &amp;nass</translation>
  </message>
  <message>
   <source>&amp;Dry already</source>
   <translation>Schon t&amp;rocken</translation>
  </message>
  <message>
   <source>&amp;Looked at it</source>
   <translation>N&amp;achgesehen</translation>
  </message>
  <message>
   <source>Note in the logbook that you had a look</source>
   <translation>Im Logbuch notieren, dass Sie nachgesehen haben</translation>
  </message>
  <message>
   <source>Tell me on the desk&amp;top, too</source>
   <translation>Auch auf der Arbeitsf&amp;läche melden</translation>
  </message>
  <message>
   <source>With a quiet &amp;sound, at the bench only</source>
   <translation>Mit leisem &amp;Ton, nur am Basteltisch</translation>
  </message>
  <message>
   <source>Drying now</source>
   <translation>Trocknet jetzt</translation>
  </message>
  <message>
   <source>What opens and what closes</source>
   <translation>Was sich öffnet und was sich schließt</translation>
  </message>
  <message>
   <source>Nothing is drying. A coat appears here once it is marked done.</source>
   <translation>Nichts trocknet. Eine Schicht erscheint hier, sobald sie als fertig notiert ist.</translation>
  </message>
  <message>
   <source>{n} coat drying</source>
   <translation>{n} Schicht trocknet</translation>
  </message>
  <message>
   <source>{n} coats drying</source>
   <translation>{n} Schichten trocknen</translation>
  </message>
  <message>
   <source>{n} ready</source>
   <translation>{n} bereit</translation>
  </message>
  <message>
   <source>{n} look due</source>
   <translation>{n} Blick steht an</translation>
  </message>
  <message>
   <source>{n} looks due</source>
   <translation>{n} Blicke stehen an</translation>
  </message>
  <message>
   <source>{n} window closing</source>
   <translation>{n} Fenster schließt</translation>
  </message>
  <message>
   <source>{n} windows closing</source>
   <translation>{n} Fenster schließen</translation>
  </message>
  <message>
   <source>{model}: {film}, {state}. {why}</source>
   <translation>{model}: {film}, {state}. {why}</translation>
  </message>
 </context>
 <context>
  <name>EffectLabel</name>
  <message>
   <source>What comes of it</source>
   <translation>Was daraus wird</translation>
  </message>
  <message>
   <source>{n} coat has no place</source>
   <translation>{n} Schicht hat keinen Platz</translation>
  </message>
  <message>
   <source>{n} coats have no place</source>
   <translation>{n} Schichten haben keinen Platz</translation>
  </message>
  <message>
   <source>All done {time}.</source>
   <translation>Alles fertig {time}.</translation>
  </message>
  <message>
   <source>All done {time}, as before.</source>
   <translation>Alles fertig {time}, wie zuvor.</translation>
  </message>
  <message>
   <source>All done {time}, {span} later than planned now.</source>
   <translation>Alles fertig {time}, {span} später als jetzt geplant.</translation>
  </message>
  <message>
   <source>All done {time}, {span} sooner than planned now.</source>
   <translation>Alles fertig {time}, {span} früher als jetzt geplant.</translation>
  </message>
  <message>
   <source>The order of coats stays sound.</source>
   <translation>Die Reihenfolge der Schichten bleibt in Ordnung.</translation>
  </message>
  <message>
   <source>and {n} more</source>
   <translation>und {n} weitere</translation>
  </message>
  <message>
   <source>Not sound: {findings}</source>
   <translation>Nicht in Ordnung: {findings}</translation>
  </message>
 </context>
 <context>
  <name>ElsewhereForm</name>
  <message>
   <source>Dries in</source>
   <translation>Trocknet in</translation>
  </message>
  <message>
   <source>Room for parts</source>
   <translation>Platz für Teile</translation>
  </message>
  <message>
   <source>Let films dry elsewhere, as in a warm box</source>
   <translation>Filme anderswo trocknen lassen, etwa in einer Wärmebox</translation>
  </message>
  <message>
   <source>a new warm box</source>
   <translation>eine neue Wärmebox</translation>
  </message>
  <message>
   <source>warm box</source>
   <translation>Wärmebox</translation>
  </message>
  <message>
   <source>warm box {number}</source>
   <translation>Wärmebox {number}</translation>
  </message>
  <message>
   <source>a warm box at {degrees}</source>
   <translation>eine Wärmebox mit {degrees}</translation>
  </message>
  <message>
   <source>{stage} dries in {where}: {models}</source>
   <translation>{stage} trocknet in {where}: {models}</translation>
  </message>
 </context>
 <context>
  <name>EmptyState</name>
  <message>
   <source>Import a project file…</source>
   <translation>Projektdatei importieren …</translation>
  </message>
  <message>
   <source>Or look around with an invented project</source>
   <translation>Oder sich mit einem erfundenen Projekt umsehen</translation>
  </message>
  <message>
   <source>Begin</source>
   <translation>Beginnen</translation>
  </message>
  <message>
   <source>Every project is set aside</source>
   <translation>Alle Projekte sind beiseitegelegt</translation>
  </message>
  <message>
   <source>Check a project in the list at the left to plan it again, or begin another.</source>
   <translation>Kreuzen Sie links in der Liste ein Projekt an, um es wieder zu planen, oder beginnen Sie ein neues.</translation>
  </message>
  <message>
   <source>Nothing on the bench yet</source>
   <translation>Noch nichts auf dem Basteltisch</translation>
  </message>
  <message>
   <source>Four short questions, and Tackfree says what to do tonight, in which order, and when it will be done.</source>
   <translation>Vier kurze Fragen, und Tackfree sagt, was heute Abend zu tun ist, in welcher Reihenfolge und wann es fertig sein wird.</translation>
  </message>
 </context>
 <context>
  <name>EntryForm</name>
  <message>
   <source>Ended</source>
   <translation>Ende</translation>
  </message>
  <message>
   <source> min</source>
   <translation> min</translation>
  </message>
  <message>
   <source>from start to end</source>
   <translation>vom Anfang bis zum Ende</translation>
  </message>
  <message>
   <source> °C</source>
   <translation> °C</translation>
  </message>
  <message>
   <source>not read</source>
   <translation>nicht abgelesen</translation>
  </message>
  <message>
   <source> % RH</source>
   <translation> % r. F.</translation>
  </message>
  <message>
   <source>Note</source>
   <translation>Notiz</translation>
  </message>
  <message>
   <source>&amp;Save</source>
   <translation>Sicher&amp;n</translation>
  </message>
  <message>
   <source>Ta&amp;ke back</source>
   <translation>Zurüc&amp;knehmen</translation>
  </message>
  <message>
   <source>It never happened: the work is planned again</source>
   <translation>Es ist nie geschehen: Die Arbeit wird wieder geplant</translation>
  </message>
  <message>
   <source>Temperature</source>
   <translation>Temperatur</translation>
  </message>
  <message>
   <source>Humidity</source>
   <translation>Feuchte</translation>
  </message>
  <message>
   <source>End</source>
   <translation>Ende</translation>
  </message>
  <message>
   <source>Be&amp;gun</source>
   <translation>Beg&amp;inn</translation>
  </message>
  <message>
   <source>&amp;Minutes of work</source>
   <translation>&amp;Minuten Arbeit</translation>
  </message>
  <message>
   <source>&amp;Air</source>
   <translation>&amp;Luft</translation>
  </message>
  <message>
   <source>Airbr&amp;ush</source>
   <translation>&amp;Airbrush</translation>
  </message>
  <message>
   <source>No&amp;te</source>
   <translation>No&amp;tiz</translation>
  </message>
  <message>
   <source>not noted</source>
   <translation>nicht notiert</translation>
  </message>
  <message>
   <source> ml</source>
   <translation> ml</translation>
  </message>
  <message>
   <source>Used of {coating}</source>
   <translation>Verbrauch von {coating}</translation>
  </message>
 </context>
 <context>
  <name>EveningForm</name>
  <message>
   <source>Weekday</source>
   <translation>Wochentag</translation>
  </message>
  <message>
   <source>From</source>
   <translation>Von</translation>
  </message>
  <message>
   <source>To</source>
   <translation>Bis</translation>
  </message>
  <message>
   <source>One evening more in the week</source>
   <translation>Ein Abend mehr in der Woche</translation>
  </message>
  <message>
   <source>bench time every {day} {start}–{end}</source>
   <translation>Bastelzeit jeden {day} {start}–{end}</translation>
  </message>
 </context>
 <context>
  <name>EveningStrip</name>
  <message>
   <source>The evening as a strip</source>
   <translation>Der Abend als Streifen</translation>
  </message>
  <message>
   <source>{start} to {end}: {work}</source>
   <translation>{start} bis {end}: {work}</translation>
  </message>
 </context>
 <context>
  <name>EveningsPanel</name>
  <message>
   <source>Add evenings</source>
   <translation>Abende hinzufügen</translation>
  </message>
  <message>
   <source>Day off</source>
   <translation>Freier Tag</translation>
  </message>
  <message>
   <source>Skip</source>
   <translation>Auslassen</translation>
  </message>
  <message>
   <source>Day of the extra session</source>
   <translation>Tag der zusätzlichen Sitzung</translation>
  </message>
  <message>
   <source>Extra session begins</source>
   <translation>Zusätzliche Sitzung beginnt</translation>
  </message>
  <message>
   <source>Extra session ends</source>
   <translation>Zusätzliche Sitzung endet</translation>
  </message>
  <message>
   <source>People at the extra session</source>
   <translation>Personen in der zusätzlichen Sitzung</translation>
  </message>
  <message>
   <source> at the bench</source>
   <translation> am Tisch</translation>
  </message>
  <message>
   <source>Add</source>
   <translation>Hinzufügen</translation>
  </message>
  <message>
   <source>Evenings</source>
   <translation>Abende</translation>
  </message>
  <message>
   <source>Days off</source>
   <translation>Freie Tage</translation>
  </message>
  <message>
   <source>Extra sessions</source>
   <translation>Zusätzliche Sitzungen</translation>
  </message>
  <message>
   <source>Be back on this day</source>
   <translation>An diesem Tag doch da sein</translation>
  </message>
  <message>
   <source>Remove this session</source>
   <translation>Diese Sitzung entfernen</translation>
  </message>
 </context>
 <context>
  <name>Exports</name>
  <message>
   <source>Evenings as &amp;calendar…</source>
   <translation>Abende als &amp;Kalender …</translation>
  </message>
  <message>
   <source>&amp;Bench sheet</source>
   <translation>&amp;Arbeitsblatt</translation>
  </message>
  <message>
   <source>This evening, {paper}…</source>
   <translation>Dieser Abend, {paper} …</translation>
  </message>
  <message>
   <source>All evenings, {paper}…</source>
   <translation>Alle Abende, {paper} …</translation>
  </message>
  <message>
   <source>&amp;Tonight as a page for the phone…</source>
   <translation>Heute Abend als Seite fürs &amp;Telefon …</translation>
  </message>
  <message>
   <source>Build &amp;record</source>
   <translation>Bau&amp;bericht</translation>
  </message>
  <message>
   <source>&amp;Plan as table…</source>
   <translation>&amp;Plan als Tabelle …</translation>
  </message>
  <message>
   <source>&amp;Logbook as table…</source>
   <translation>&amp;Logbuch als Tabelle …</translation>
  </message>
  <message>
   <source>S&amp;hopping as table…</source>
   <translation>&amp;Einkauf als Tabelle …</translation>
  </message>
  <message>
   <source>One pro&amp;ject</source>
   <translation>Ein Pro&amp;jekt</translation>
  </message>
  <message>
   <source>One &amp;sequence</source>
   <translation>Ein Abla&amp;uf</translation>
  </message>
  <message>
   <source>there is none</source>
   <translation>es gibt keinen</translation>
  </message>
  <message>
   <source>All projects…</source>
   <translation>Alle Projekte …</translation>
  </message>
  <message>
   <source>Calendar</source>
   <translation>Kalender</translation>
  </message>
  <message>
   <source>Bench sheet</source>
   <translation>Arbeitsblatt</translation>
  </message>
  <message>
   <source>Page for the phone</source>
   <translation>Seite fürs Telefon</translation>
  </message>
  <message>
   <source>Table</source>
   <translation>Tabelle</translation>
  </message>
  <message>
   <source>Build record, as HTML or, named *.md, as Markdown</source>
   <translation>Baubericht als HTML oder, mit der Endung .md, als Markdown</translation>
  </message>
  <message>
   <source>Project file</source>
   <translation>Projektdatei</translation>
  </message>
  <message>
   <source>Sequence file</source>
   <translation>Ablaufdatei</translation>
  </message>
  <message>
   <source>There is no plan to write yet.</source>
   <translation>Es gibt noch keinen Plan, der geschrieben werden könnte.</translation>
  </message>
  <message>
   <source>{title} ({pattern})</source>
   <translation>{title} ({pattern})</translation>
  </message>
  <message>
   <source>Writing {path} …</source>
   <translation>{path} wird geschrieben …</translation>
  </message>
  <message>
   <source>Exported to {path}</source>
   <translation>Exportiert nach {path}</translation>
  </message>
 </context>
 <context>
  <name>ExtraDialog</name>
  <message>
   <source>&amp;Day</source>
   <translation>&amp;Tag</translation>
  </message>
 </context>
 <context>
  <name>Files</name>
  <message>
   <source>New bench book</source>
   <translation>Neues Werkbuch</translation>
  </message>
  <message>
   <source>Bench books ({pattern})</source>
   <translation>Werkbücher ({pattern})</translation>
  </message>
  <message>
   <source>{path} is there already; open it, or choose another name</source>
   <translation>{path} gibt es schon; öffnen Sie es, oder wählen Sie einen anderen Namen</translation>
  </message>
  <message>
   <source>Open bench book</source>
   <translation>Werkbuch öffnen</translation>
  </message>
  <message>
   <source>Bench books, archives ({pattern});;All files (*)</source>
   <translation>Werkbücher, Archive ({pattern});;Alle Dateien (*)</translation>
  </message>
  <message>
   <source>Import project file</source>
   <translation>Projektdatei importieren</translation>
  </message>
  <message>
   <source>Project files, tables ({pattern});;All files (*)</source>
   <translation>Projektdateien, Tabellen ({pattern});;Alle Dateien (*)</translation>
  </message>
  <message>
   <source>{n} paints of {file} stand on the shelf</source>
   <translation>{n} Farben aus {file} stehen im Regal</translation>
  </message>
  <message>
   <source>{file}: {problem}</source>
   <translation>{file}: {problem}</translation>
  </message>
  <message>
   <source>Export project file</source>
   <translation>Projektdatei exportieren</translation>
  </message>
  <message>
   <source>Project files ({pattern});;With their photos ({packed})</source>
   <translation>Projektdateien ({pattern});;Mit ihren Fotos ({packed})</translation>
  </message>
  <message>
   <source>Exported to {path}</source>
   <translation>Exportiert nach {path}</translation>
  </message>
  <message>
   <source>Nothing in it can be read.</source>
   <translation>Davon lässt sich nichts lesen.</translation>
  </message>
  <message>
   <source>Save what can be read</source>
   <translation>Lesbares speichern</translation>
  </message>
  <message>
   <source>Project files ({pattern})</source>
   <translation>Projektdateien ({pattern})</translation>
  </message>
 </context>
 <context>
  <name>FilterBar</name>
  <message>
   <source>Show the project</source>
   <translation>Das Projekt zeigen</translation>
  </message>
  <message>
   <source>Show the model</source>
   <translation>Das Modell zeigen</translation>
  </message>
  <message>
   <source>Show the coating</source>
   <translation>Das Mittel zeigen</translation>
  </message>
  <message>
   <source>Show the tool</source>
   <translation>Das Werkzeug zeigen</translation>
  </message>
  <message>
   <source>Show all</source>
   <translation>Alles zeigen</translation>
  </message>
  <message>
   <source>&amp;Compare with the last plan</source>
   <translation>Mit dem &amp;letzten Plan vergleichen</translation>
  </message>
  <message>
   <source>A dashed outline shows where a piece of work stood before the last change.</source>
   <translation>Ein gestrichelter Umriss zeigt, wo eine Arbeit vor der letzten Änderung stand.</translation>
  </message>
  <message>
   <source>{model} ({project})</source>
   <translation>{model} ({project})</translation>
  </message>
  <message>
   <source>All projects</source>
   <translation>Alle Projekte</translation>
  </message>
  <message>
   <source>All models</source>
   <translation>Alle Modelle</translation>
  </message>
  <message>
   <source>All coatings</source>
   <translation>Alle Mittel</translation>
  </message>
  <message>
   <source>All tools</source>
   <translation>Alle Werkzeuge</translation>
  </message>
 </context>
 <context>
  <name>FindingsPanel</name>
  <message>
   <source>Findings</source>
   <translation>Befunde</translation>
  </message>
  <message>
   <source>The order of coats is sound.</source>
   <translation>Die Reihenfolge der Schichten ist in Ordnung.</translation>
  </message>
  <message>
   <source>Where practice is divided</source>
   <translation>Wo die Praxis geteilt ist</translation>
  </message>
  <message>
   <source>{verdict}: {message}</source>
   <translation>{verdict}: {message}</translation>
  </message>
  <message>
   <source>Source: {source}</source>
   <translation>Quelle: {source}</translation>
  </message>
  <message>
   <source>Mend: {mend}</source>
   <translation>Abhilfe: {mend}</translation>
  </message>
  <message>
   <source>Apply</source>
   <translation>Anwenden</translation>
  </message>
  <message>
   <source>Apply this mend; it can be undone</source>
   <translation>Diese Abhilfe anwenden; sie lässt sich rückgängig machen</translation>
  </message>
  <message>
   <source>Apply: {mend}</source>
   <translation>Anwenden: {mend}</translation>
  </message>
  <message>
   <source>yours – {way}: {why}</source>
   <translation>Ihre – {way}: {why}</translation>
  </message>
 </context>
 <context>
  <name>FirstForm</name>
  <message>
   <source>First</source>
   <translation>Zuerst</translation>
  </message>
  <message>
   <source>One vehicle first</source>
   <translation>Ein Fahrzeug zuerst</translation>
  </message>
  <message>
   <source>none of {project}</source>
   <translation>keines von {project}</translation>
  </message>
  <message>
   <source>{model} first</source>
   <translation>{model} zuerst</translation>
  </message>
 </context>
 <context>
  <name>FirstRun</name>
  <message>
   <source>I have a &amp;warm box</source>
   <translation>Ich habe eine Wärmebo&amp;x</translation>
  </message>
  <message>
   <source>I have an &amp;airbrush</source>
   <translation>Ich habe eine &amp;Airbrush</translation>
  </message>
  <message>
   <source>Plan &amp;it</source>
   <translation>&amp;Planen</translation>
  </message>
  <message>
   <source> °C</source>
   <translation> °C</translation>
  </message>
  <message>
   <source> % RH</source>
   <translation> % r. F.</translation>
  </message>
  <message>
   <source>Oil, enamel and clear coats may dry in it, where the plan gains by it; at most 40 °C, and try a scrap of the same plastic first</source>
   <translation>Öl, Email und Klarlacke dürfen darin trocknen, wo der Plan dadurch gewinnt; höchstens 40 °C, und zuerst einen Rest desselben Kunststoffs versuchen</translation>
  </message>
  <message>
   <source>Without one, sequences take brush or spray can instead</source>
   <translation>Ohne sie nehmen Abläufe Pinsel oder Sprühdose</translation>
  </message>
  <message>
   <source>Ctrl+Enter, from anywhere here</source>
   <translation>Ctrl+Enter, von überall hier</translation>
  </message>
  <message>
   <source>1  What is on the table?</source>
   <translation>1  Was steht auf dem Tisch?</translation>
  </message>
  <message>
   <source>2  When do you paint?</source>
   <translation>2  Wann malen Sie?</translation>
  </message>
  <message>
   <source>3  What is the room like?</source>
   <translation>3  Wie ist der Raum?</translation>
  </message>
  <message>
   <source>Temperature</source>
   <translation>Temperatur</translation>
  </message>
  <message>
   <source>Humidity</source>
   <translation>Feuchte</translation>
  </message>
  <message>
   <source>4  Which paints do you have?</source>
   <translation>4  Welche Farben sind da?</translation>
  </message>
  <message>
   <source>On the table</source>
   <translation>Auf dem Tisch</translation>
  </message>
  <message>
   <source>A name is enough; everything can be changed later.</source>
   <translation>Ein Name genügt; alles lässt sich später ändern.</translation>
  </message>
  <message>
   <source>{n} vehicle</source>
   <translation>{n} Fahrzeug</translation>
  </message>
  <message>
   <source>{n} vehicles</source>
   <translation>{n} Fahrzeuge</translation>
  </message>
  <message>
   <source>{vehicles}, {days} at the bench</source>
   <translation>{vehicles}, {days} am Basteltisch</translation>
  </message>
  <message>
   <source>{told}. More than {n} at once gets dull; Build lets one go first.</source>
   <translation>{told}. Mehr als {n} auf einmal werden eintönig; unter „Bauplan“ kann eins vorausgehen.</translation>
  </message>
 </context>
 <context>
  <name>FormDialog</name>
  <message>
   <source>&amp;Keep</source>
   <translation>Beha&amp;lten</translation>
  </message>
  <message>
   <source>Cancel</source>
   <translation>Abbrechen</translation>
  </message>
 </context>
 <context>
  <name>GapsDialog</name>
  <message>
   <source>Free time</source>
   <translation>Freie Zeit</translation>
  </message>
  <message>
   <source>What gaps are good for</source>
   <translation>Wozu Lücken gut sind</translation>
  </message>
  <message>
   <source>Close</source>
   <translation>Schließen</translation>
  </message>
  <message>
   <source>&amp;Do it then</source>
   <translation>&amp;Dann tun</translation>
  </message>
  <message>
   <source>Wish this work into that session; the plan follows</source>
   <translation>Diese Arbeit in diese Sitzung wünschen; der Plan folgt</translation>
  </message>
  <message>
   <source>Hands are free then; all other work stays where it is.</source>
   <translation>Dann sind die Hände frei; alle andere Arbeit bleibt, wo sie ist.</translation>
  </message>
  <message>
   <source>No gap of the coming week is long enough for anything.</source>
   <translation>Keine Lücke der kommenden Woche reicht für etwas.</translation>
  </message>
 </context>
 <context>
  <name>GateField</name>
  <message>
   <source>Counts from</source>
   <translation>Zählt ab</translation>
  </message>
  <message>
   <source>What must be by the closing</source>
   <translation>Was bis zum Schließen geschehen sein muss</translation>
  </message>
  <message>
   <source>Another window</source>
   <translation>Noch ein Fenster</translation>
  </message>
  <message>
   <source>A later window, as when a film may be coated again once it was scuffed</source>
   <translation>Ein späteres Fenster, etwa wenn ein Film nach dem Anschleifen wieder überlackiert werden darf</translation>
  </message>
  <message>
   <source>Remove this gate</source>
   <translation>Diese Bedingung entfernen</translation>
  </message>
  <message>
   <source>counts from</source>
   <translation>zählt ab</translation>
  </message>
  <message>
   <source>must have begun by the closing</source>
   <translation>muss vor dem Schließen begonnen sein</translation>
  </message>
  <message>
   <source>must be done by the closing</source>
   <translation>muss bis zum Schließen fertig sein</translation>
  </message>
 </context>
 <context>
  <name>GatesField</name>
  <message>
   <source>Add a gate</source>
   <translation>Bedingung hinzufügen</translation>
  </message>
  <message>
   <source>Let this step wait for a film, or keep it within a time after another step</source>
   <translation>Diesen Schritt auf einen Film warten lassen oder innerhalb einer Zeit nach einem anderen Schritt halten</translation>
  </message>
 </context>
 <context>
  <name>GearView</name>
  <message>
   <source> m³</source>
   <translation> m³</translation>
  </message>
  <message>
   <source>Airbrushes</source>
   <translation>Airbrushes</translation>
  </message>
  <message>
   <source>Where films dry</source>
   <translation>Wo Filme trocknen</translation>
  </message>
  <message>
   <source>Holders</source>
   <translation>Halter</translation>
  </message>
  <message>
   <source>Gear</source>
   <translation>Ausrüstung</translation>
  </message>
  <message>
   <source>Room vol&amp;ume</source>
   <translation>Raum&amp;volumen</translation>
  </message>
  <message>
   <source>for the estimate of solvent vapour</source>
   <translation>für die Schätzung des Lösemitteldampfs</translation>
  </message>
  <message>
   <source>No airbrush. Steps are then done by brush, can, sponge, cloth or hand.</source>
   <translation>Keine Airbrush. Schritte werden dann mit Pinsel, Dose, Schwamm, Tuch oder Hand gemacht.</translation>
  </message>
  <message>
   <source>Name</source>
   <translation>Name</translation>
  </message>
  <message>
   <source>Load</source>
   <translation>Füllen</translation>
  </message>
  <message>
   <source>Change</source>
   <translation>Wechseln</translation>
  </message>
  <message>
   <source>{same} / {other} min</source>
   <translation>{same} / {other} min</translation>
  </message>
  <message>
   <source>{same} min within a family, {other} min to another</source>
   <translation>{same} min innerhalb einer Familie, {other} min zu einer anderen</translation>
  </message>
  <message>
   <source>Clean</source>
   <translation>Reinigen</translation>
  </message>
  <message>
   <source>Idle up to</source>
   <translation>Standzeit bis</translation>
  </message>
  <message>
   <source>Least fill</source>
   <translation>Kleinste Füllung</translation>
  </message>
  <message>
   <source>Cup</source>
   <translation>Becher</translation>
  </message>
  <message>
   <source>Lost</source>
   <translation>Verlust</translation>
  </message>
  <message>
   <source>Stays on the model</source>
   <translation>Bleibt auf dem Modell</translation>
  </message>
  <message>
   <source>Add airbrush…</source>
   <translation>Airbrush hinzufügen …</translation>
  </message>
  <message>
   <source>Change…</source>
   <translation>Ändern …</translation>
  </message>
  <message>
   <source>Remove</source>
   <translation>Entfernen</translation>
  </message>
  <message>
   <source>Places where films dry</source>
   <translation>Orte, an denen Filme trocknen</translation>
  </message>
  <message>
   <source>No place to dry.</source>
   <translation>Kein Ort zum Trocknen.</translation>
  </message>
  <message>
   <source>Drying places</source>
   <translation>Trockenplätze</translation>
  </message>
  <message>
   <source>Air on workdays</source>
   <translation>Luft an Werktagen</translation>
  </message>
  <message>
   <source>Air on weekends</source>
   <translation>Luft am Wochenende</translation>
  </message>
  <message>
   <source>as on workdays</source>
   <translation>wie an Werktagen</translation>
  </message>
  <message>
   <source>Add place…</source>
   <translation>Ort hinzufügen …</translation>
  </message>
  <message>
   <source>Make it the usual</source>
   <translation>Zum üblichen machen</translation>
  </message>
  <message>
   <source>Where films dry unless a step says otherwise</source>
   <translation>Wo Filme trocknen, wenn ein Schritt nichts anderes sagt</translation>
  </message>
  <message>
   <source>Slow coats may dry here</source>
   <translation>Langsame Schichten dürfen hier trocknen</translation>
  </message>
  <message>
   <source>Oil, enamel and clear coats of every project get it as another place; see Models</source>
   <translation>Öl, Email und Klarlacke aller Projekte bekommen ihn als weiteren Ort; siehe Modelle</translation>
  </message>
  <message>
   <source>{name} (the usual)</source>
   <translation>{name} (üblich)</translation>
  </message>
  <message>
   <source>usual</source>
   <translation>üblich</translation>
  </message>
  <message>
   <source>{share:.0f} %</source>
   <translation>{share:.0f} %</translation>
  </message>
 </context>
 <context>
  <name>GiveDialog</name>
  <message>
   <source>&amp;All shown</source>
   <translation>&amp;Alle gezeigten</translation>
  </message>
  <message>
   <source>&amp;None shown</source>
   <translation>&amp;Keine gezeigten</translation>
  </message>
  <message>
   <source>What comes of it</source>
   <translation>Was dabei herauskommt</translation>
  </message>
  <message>
   <source>Models</source>
   <translation>Modelle</translation>
  </message>
  <message>
   <source>&amp;Models that get it</source>
   <translation>&amp;Modelle, die ihn bekommen</translation>
  </message>
  <message>
   <source>Steps that a model already has are replaced; what is logged stays.</source>
   <translation>Vorhandene Schritte werden ersetzt; was im Logbuch ist, bleibt.</translation>
  </message>
  <message>
   <source>Options</source>
   <translation>Optionen</translation>
  </message>
  <message>
   <source>&amp;Options</source>
   <translation>&amp;Optionen</translation>
  </message>
  <message>
   <source>Colours</source>
   <translation>Farben</translation>
  </message>
  <message>
   <source>&amp;Colours</source>
   <translation>&amp;Farben</translation>
  </message>
  <message>
   <source>&amp;Give</source>
   <translation>&amp;Geben</translation>
  </message>
  <message>
   <source>part of a name</source>
   <translation>Teil eines Namens</translation>
  </message>
  <message>
   <source>Show only</source>
   <translation>Nur zeigen</translation>
  </message>
  <message>
   <source>&amp;Show only</source>
   <translation>Nur &amp;zeigen</translation>
  </message>
  <message>
   <source>No model is chosen yet.</source>
   <translation>Noch kein Modell gewählt.</translation>
  </message>
  <message>
   <source>{steps} each, {minutes} of work in all, without loading and cleaning.</source>
   <translation>je {steps}, zusammen {minutes} Arbeit, ohne Füllen und Reinigen.</translation>
  </message>
  <message>
   <source>1 step</source>
   <translation>1 Schritt</translation>
  </message>
  <message>
   <source>{n} steps</source>
   <translation>{n} Schritte</translation>
  </message>
  <message>
   <source>More than five at once gets tedious; consider finishing one first.</source>
   <translation>Mehr als fünf auf einmal werden eintönig; vielleicht eins vorab fertigstellen.</translation>
  </message>
  <message>
   <source>{model} — {project}</source>
   <translation>{model} — {project}</translation>
  </message>
  <message>
   <source>{model}, no steps yet</source>
   <translation>{model}, noch ohne Schritte</translation>
  </message>
  <message>
   <source>{model}, {steps}</source>
   <translation>{model}, {steps}</translation>
  </message>
  <message>
   <source>choose at least one model</source>
   <translation>wählen Sie mindestens ein Modell</translation>
  </message>
 </context>
 <context>
  <name>Headline</name>
  <message>
   <source>Start at the bench (B)</source>
   <translation>An die Werkbank (B)</translation>
  </message>
  <message>
   <source>One piece of work at a time, in large letters (F11)</source>
   <translation>Eine Arbeit nach der anderen, in großer Schrift (F11)</translation>
  </message>
 </context>
 <context>
  <name>HoldersPanel</name>
  <message>
   <source>Parts on holders</source>
   <translation>Teile auf Haltern</translation>
  </message>
  <message>
   <source>No part has a holder. Set it on the part, in Models.</source>
   <translation>Kein Teil hat einen Halter. Er wird beim Teil gesetzt, unter „Modelle“.</translation>
  </message>
  <message>
   <source>Holder</source>
   <translation>Halter</translation>
  </message>
  <message>
   <source>Part</source>
   <translation>Teil</translation>
  </message>
  <message>
   <source>Model</source>
   <translation>Modell</translation>
  </message>
  <message>
   <source>In use</source>
   <translation>Benutzt</translation>
  </message>
  <message>
   <source>Show the part</source>
   <translation>Teil zeigen</translation>
  </message>
  <message>
   <source>Most needed at once: {holders}</source>
   <translation>Höchstens zugleich gebraucht: {holders}</translation>
  </message>
  <message>
   <source>{count} × {holder}, from {time} on</source>
   <translation>{count} × {holder}, ab {time}</translation>
  </message>
  <message>
   <source>not planned</source>
   <translation>nicht geplant</translation>
  </message>
  <message>
   <source>{since} to {until}</source>
   <translation>{since} bis {until}</translation>
  </message>
 </context>
 <context>
  <name>HoursLine</name>
  <message>
   <source>Days</source>
   <translation>Tage</translation>
  </message>
  <message>
   <source>{day} (key {n})</source>
   <translation>{day} (Taste {n})</translation>
  </message>
  <message>
   <source>Hours at the bench, as 19:30-21:30 or 20-22</source>
   <translation>Stunden am Basteltisch, als 19:30-21:30 oder 20-22</translation>
  </message>
 </context>
 <context>
  <name>ImportDialog</name>
  <message>
   <source>Import {file}</source>
   <translation>{file} importieren</translation>
  </message>
  <message>
   <source>Import</source>
   <translation>Importieren</translation>
  </message>
  <message>
   <source>Take the file's bench time in place of yours</source>
   <translation>Bastelzeit der Datei an Stelle Ihrer nehmen</translation>
  </message>
  <message>
   <source>Take the file's room and air in place of yours</source>
   <translation>Raum und Luft der Datei an Stelle Ihrer nehmen</translation>
  </message>
  <message>
   <source>Take the file's airbrushes in place of yours</source>
   <translation>Airbrushes der Datei an Stelle Ihrer nehmen</translation>
  </message>
  <message>
   <source>These are in your book, and described differently:</source>
   <translation>Diese stehen in Ihrem Buch und sind anders beschrieben:</translation>
  </message>
  <message>
   <source>It does not fit this book: {why}</source>
   <translation>Es passt nicht in dieses Buch: {why}</translation>
  </message>
  <message>
   <source>Nothing that is not in your book already</source>
   <translation>Nichts, was nicht schon in Ihrem Buch steht</translation>
  </message>
  <message>
   <source>Already in your book, unchanged: {names}.</source>
   <translation>Schon in Ihrem Buch, unverändert: {names}.</translation>
  </message>
  <message>
   <source>Comes with it: {names}.</source>
   <translation>Kommt mit: {names}.</translation>
  </message>
 </context>
 <context>
  <name>Improving</name>
  <message>
   <source>a better plan was taken</source>
   <translation>ein besserer Plan wurde genommen</translation>
  </message>
  <message>
   <source>Better plan found: {gains} (F6)</source>
   <translation>Besserer Plan gefunden: {gains} (F6)</translation>
  </message>
  <message>
   <source>The search for better plans stopped; the plan stays</source>
   <translation>Die Suche nach besseren Plänen brach ab; der Plan bleibt</translation>
  </message>
  <message>
   <source>No plan can place everything: {clashes}</source>
   <translation>Kein Plan kann alles unterbringen: {clashes}</translation>
  </message>
  <message>
   <source>Proven: no plan finishes earlier</source>
   <translation>Bewiesen: Kein Plan wird früher fertig</translation>
  </message>
  <message>
   <source>Within {time} of the best finish</source>
   <translation>Höchstens {time} nach dem besten Ende</translation>
  </message>
  <message>
   <source>Search over: within {time} of the best finish</source>
   <translation>Suche zu Ende: höchstens {time} nach dem besten Ende</translation>
  </message>
  <message>
   <source>a better plan was found</source>
   <translation>ein besserer Plan wurde gefunden</translation>
  </message>
 </context>
 <context>
  <name>Inspector</name>
  <message>
   <source>Inspector</source>
   <translation>Inspektor</translation>
  </message>
  <message>
   <source>What the inspector shows</source>
   <translation>Was der Inspektor zeigt</translation>
  </message>
  <message>
   <source>Fold away (F4)</source>
   <translation>Einklappen (F4)</translation>
  </message>
  <message>
   <source>Fold the inspector away</source>
   <translation>Den Inspektor einklappen</translation>
  </message>
 </context>
 <context>
  <name>KeptBook</name>
  <message>
   <source>Everything is saved.</source>
   <translation>Alles ist gespeichert.</translation>
  </message>
  <message>
   <source>another program changed the book</source>
   <translation>ein anderes Programm hat das Buch geändert</translation>
  </message>
  <message>
   <source>undo {name}</source>
   <translation>rückgängig: {name}</translation>
  </message>
  <message>
   <source>What was not saved is kept in {path}</source>
   <translation>Nicht Gespeichertes liegt in {path}</translation>
  </message>
 </context>
 <context>
  <name>LastEdits</name>
  <message>
   <source>Last edits</source>
   <translation>Letzte Änderungen</translation>
  </message>
  <message>
   <source>Edits, the newest first</source>
   <translation>Änderungen, die neueste zuerst</translation>
  </message>
  <message>
   <source>&amp;Go to this point</source>
   <translation>&amp;Zu diesem Punkt gehen</translation>
  </message>
  <message>
   <source>Going to a point undoes, or redoes, the edits after it. The logbook stays.</source>
   <translation>Zu einem Punkt gehen macht die Änderungen danach rückgängig oder wiederholt sie. Das Logbuch bleibt.</translation>
  </message>
  <message>
   <source>Before all of these edits</source>
   <translation>Vor all diesen Änderungen</translation>
  </message>
  <message>
   <source>{edit}  (here)</source>
   <translation>{edit}  (hier)</translation>
  </message>
  <message>
   <source>another point of the edits</source>
   <translation>ein anderer Punkt der Änderungen</translation>
  </message>
  <message>
   <source>{time}  {edit}  (undone)</source>
   <translation>{time}  {edit}  (rückgängig)</translation>
  </message>
  <message>
   <source>{time}  {edit}</source>
   <translation>{time}  {edit}</translation>
  </message>
 </context>
 <context>
  <name>LeaveOutForm</name>
  <message>
   <source>Leave something out</source>
   <translation>Etwas weglassen</translation>
  </message>
  <message>
   <source>without {stage}: {models}</source>
   <translation>ohne {stage}: {models}</translation>
  </message>
 </context>
 <context>
  <name>LeftoverDialog</name>
  <message>
   <source>jar 1</source>
   <translation>Glas 1</translation>
  </message>
 </context>
 <context>
  <name>Legend</name>
  <message>
   <source>bench time</source>
   <translation>Bastelzeit</translation>
  </message>
  <message>
   <source>filled as far as planned</source>
   <translation>gefüllt, soweit verplant</translation>
  </message>
  <message>
   <source>two people</source>
   <translation>zwei Personen</translation>
  </message>
  <message>
   <source>quiet hours</source>
   <translation>Ruhezeiten</translation>
  </message>
  <message>
   <source>daylight</source>
   <translation>Tageslicht</translation>
  </message>
 </context>
 <context>
  <name>LinesModel</name>
  <message>
   <source>Day</source>
   <translation>Tag</translation>
  </message>
  <message>
   <source>Time</source>
   <translation>Zeit</translation>
  </message>
  <message>
   <source>What</source>
   <translation>Was</translation>
  </message>
  <message>
   <source>Minutes</source>
   <translation>Minuten</translation>
  </message>
  <message>
   <source>Photos</source>
   <translation>Fotos</translation>
  </message>
  <message>
   <source>Note</source>
   <translation>Notiz</translation>
  </message>
  <message>
   <source>Air</source>
   <translation>Luft</translation>
  </message>
  <message>
   <source>Used</source>
   <translation>Verbraucht</translation>
  </message>
  <message>
   <source>{start}, under way</source>
   <translation>{start}, in Arbeit</translation>
  </message>
  <message>
   <source>{start}–{end}</source>
   <translation>{start}–{end}</translation>
  </message>
 </context>
 <context>
  <name>LocationDialog</name>
  <message>
   <source>warm box</source>
   <translation>Wärmebox</translation>
  </message>
  <message>
   <source>Weekends as &amp;workdays</source>
   <translation>Wochenenden wie &amp;Werktage</translation>
  </message>
  <message>
   <source>Place</source>
   <translation>Ort</translation>
  </message>
  <message>
   <source>Air on workdays</source>
   <translation>Luft an Werktagen</translation>
  </message>
  <message>
   <source>Warm air bends thin plastic: no more than {most:g} °C for hard styrene, and none for soft polymer (common practice, no source).</source>
   <translation>Warme Luft verzieht dünnen Kunststoff: höchstens {most:g} °C für Polystyrol, keine für weiches Polymer (gängige Praxis, ohne Quelle).</translation>
  </message>
  <message>
   <source>Air on weekends</source>
   <translation>Luft am Wochenende</translation>
  </message>
 </context>
 <context>
  <name>LogbookView</name>
  <message>
   <source>model, step, coating, note</source>
   <translation>Modell, Schritt, Mittel, Notiz</translation>
  </message>
  <message>
   <source>everything</source>
   <translation>alles</translation>
  </message>
  <message>
   <source>work</source>
   <translation>Arbeit</translation>
  </message>
  <message>
   <source>what happened</source>
   <translation>was geschah</translation>
  </message>
  <message>
   <source>looks at films</source>
   <translation>Blicke auf Filme</translation>
  </message>
  <message>
   <source>cleaned airbrushes</source>
   <translation>gereinigte Airbrushes</translation>
  </message>
  <message>
   <source>A&amp;dd photo…</source>
   <translation>Foto hinzuf&amp;ügen …</translation>
  </message>
  <message>
   <source>Ta&amp;ke back</source>
   <translation>Zurüc&amp;knehmen</translation>
  </message>
  <message>
   <source>It never happened: its cup holds what was sprayed last</source>
   <translation>Es ist nie geschehen: Im Becher ist, was zuletzt gespritzt wurde</translation>
  </message>
  <message>
   <source>Lines of the logbook</source>
   <translation>Zeilen des Logbuchs</translation>
  </message>
  <message>
   <source>F&amp;ind</source>
   <translation>&amp;Suchen</translation>
  </message>
  <message>
   <source>Pro&amp;ject</source>
   <translation>Pro&amp;jekt</translation>
  </message>
  <message>
   <source>Sho&amp;w</source>
   <translation>&amp;Zeigen</translation>
  </message>
  <message>
   <source>Logbook</source>
   <translation>Logbuch</translation>
  </message>
  <message>
   <source>The entry chosen, and the pace</source>
   <translation>Der gewählte Eintrag und das Tempo</translation>
  </message>
  <message>
   <source>all projects</source>
   <translation>alle Projekte</translation>
  </message>
  <message>
   <source>{lines}, {length} of work</source>
   <translation>{lines}, {length} Arbeit</translation>
  </message>
  <message>
   <source>{n} line</source>
   <translation>{n} Zeile</translation>
  </message>
  <message>
   <source>{n} lines</source>
   <translation>{n} Zeilen</translation>
  </message>
  <message>
   <source>Nothing is noted yet; what is done at the bench comes here.</source>
   <translation>Noch ist nichts notiert; was am Basteltisch getan wird, kommt hierher.</translation>
  </message>
  <message>
   <source>Add photos</source>
   <translation>Fotos hinzufügen</translation>
  </message>
  <message>
   <source>Pictures ({suffixes})</source>
   <translation>Bilder ({suffixes})</translation>
  </message>
 </context>
 <context>
  <name>MainWindow</name>
  <message>
   <source>Tackfree</source>
   <translation>Tackfree</translation>
  </message>
  <message>
   <source>{book} – Tackfree</source>
   <translation>{book} – Tackfree</translation>
  </message>
 </context>
 <context>
  <name>ManyForm</name>
  <message>
   <source>What is set here is set in all of them.</source>
   <translation>Was hier gesetzt wird, gilt für alle gewählten.</translation>
  </message>
  <message>
   <source>as it is</source>
   <translation>wie es ist</translation>
  </message>
  <message>
   <source>Fixed minutes</source>
   <translation>Feste Minuten</translation>
  </message>
  <message>
   <source>For each part</source>
   <translation>Je Teil</translation>
  </message>
  <message>
   <source>For each change of colour</source>
   <translation>Je Farbwechsel</translation>
  </message>
  <message>
   <source>Coats</source>
   <translation>Schichten</translation>
  </message>
  <message>
   <source>In place of</source>
   <translation>An Stelle von</translation>
  </message>
  <message>
   <source>Lay</source>
   <translation>Auftragen</translation>
  </message>
  <message>
   <source>With</source>
   <translation>Womit</translation>
  </message>
  <message>
   <source>Dries in</source>
   <translation>Trocknet in</translation>
  </message>
  <message>
   <source>0: in one go</source>
   <translation>0: in einem Zug</translation>
  </message>
  <message>
   <source>0: none</source>
   <translation>0: keiner</translation>
  </message>
  <message>
   <source>Can be interrupted after</source>
   <translation>Unterbrechbar nach</translation>
  </message>
  <message>
   <source>Have a look after</source>
   <translation>Nachsehen nach</translation>
  </message>
  <message>
   <source>Finished in one session</source>
   <translation>In einer Sitzung fertig</translation>
  </message>
  <message>
   <source>Needs daylight</source>
   <translation>Braucht Tageslicht</translation>
  </message>
  <message>
   <source>Smells</source>
   <translation>Riecht</translation>
  </message>
  <message>
   <source>Noisy</source>
   <translation>Laut</translation>
  </message>
  <message>
   <source>Hands free</source>
   <translation>Hände frei</translation>
  </message>
  <message>
   <source>In any air</source>
   <translation>In jeder Luft</translation>
  </message>
  <message>
   <source>Needs two people</source>
   <translation>Braucht zwei Personen</translation>
  </message>
  <message>
   <source>{n} step</source>
   <translation>{n} Schritt</translation>
  </message>
  <message>
   <source>{n} steps</source>
   <translation>{n} Schritte</translation>
  </message>
  <message>
   <source>every colour</source>
   <translation>jede Farbe</translation>
  </message>
  <message>
   <source>yes</source>
   <translation>ja</translation>
  </message>
  <message>
   <source>no</source>
   <translation>nein</translation>
  </message>
 </context>
 <context>
  <name>MarkField</name>
  <message>
   <source>{name}: minutes</source>
   <translation>{name}: Minuten</translation>
  </message>
  <message>
   <source>after minutes</source>
   <translation>nach Minuten</translation>
  </message>
  <message>
   <source>after minutes at 23 °C, 50 %</source>
   <translation>nach Minuten bei 23 °C, 50 %</translation>
  </message>
 </context>
 <context>
  <name>MeasureLine</name>
  <message>
   <source>How many such bodies</source>
   <translation>Wie viele solche Körper</translation>
  </message>
  <message>
   <source>Shape</source>
   <translation>Form</translation>
  </message>
  <message>
   <source>Length, or a ball's diameter</source>
   <translation>Länge, oder Durchmesser einer Kugel</translation>
  </message>
  <message>
   <source>Width or diameter</source>
   <translation>Breite oder Durchmesser</translation>
  </message>
  <message>
   <source>Height</source>
   <translation>Höhe</translation>
  </message>
  <message>
   <source>Remove this body</source>
   <translation>Diesen Körper entfernen</translation>
  </message>
 </context>
 <context>
  <name>MeasuresField</name>
  <message>
   <source>Add a body</source>
   <translation>Körper hinzufügen</translation>
  </message>
 </context>
 <context>
  <name>MendPrompt</name>
  <message>
   <source>Mends</source>
   <translation>Abhilfen</translation>
  </message>
  <message>
   <source>&amp;Next (F8)</source>
   <translation>&amp;Weiter (F8)</translation>
  </message>
  <message>
   <source>&amp;Mend it (Enter)</source>
   <translation>&amp;Beheben (Eingabe)</translation>
  </message>
  <message>
   <source>Nothing is unsound.</source>
   <translation>Nichts ist fehlerhaft.</translation>
  </message>
  <message>
   <source>{at} of {n} findings</source>
   <translation>Befund {at} von {n}</translation>
  </message>
  <message>
   <source>no mend is known</source>
   <translation>keine Abhilfe bekannt</translation>
  </message>
  <message>
   <source>Mend: {mend}</source>
   <translation>Abhilfe: {mend}</translation>
  </message>
  <message>
   <source>Mend &amp;all {n} of this kind</source>
   <translation>&amp;Alle {n} dieser Art beheben</translation>
  </message>
 </context>
 <context>
  <name>MergeView</name>
  <message>
   <source>What differs</source>
   <translation>Was sich unterscheidet</translation>
  </message>
  <message>
   <source>Both sides of what is chosen above</source>
   <translation>Beide Seiten dessen, was oben gewählt ist</translation>
  </message>
  <message>
   <source>&amp;Keep yours</source>
   <translation>&amp;Ihres behalten</translation>
  </message>
  <message>
   <source>Take the &amp;file's in its place</source>
   <translation>Das der &amp;Datei an dessen Stelle nehmen</translation>
  </message>
  <message>
   <source>Take it &amp;beside yours, named</source>
   <translation>Unter diesem &amp;Namen danebenstellen</translation>
  </message>
  <message>
   <source>Name under which it is taken beside yours</source>
   <translation>Name, unter dem es neben Ihres gestellt wird</translation>
  </message>
 </context>
 <context>
  <name>MixDialog</name>
  <message>
   <source>new mix</source>
   <translation>neue Mischung</translation>
  </message>
  <message>
   <source>its own</source>
   <translation>ihre eigene</translation>
  </message>
 </context>
 <context>
  <name>ModelActs</name>
  <message>
   <source>&amp;More vehicles…</source>
   <translation>&amp;Weitere Fahrzeuge…</translation>
  </message>
  <message>
   <source>&amp;Paint another like this…</source>
   <translation>&amp;Noch eins so bemalen…</translation>
  </message>
  <message>
   <source>Change the &amp;order…</source>
   <translation>&amp;Ablauf ändern…</translation>
  </message>
  <message>
   <source>How &amp;far they are…</source>
   <translation>Wie w&amp;eit sie sind…</translation>
  </message>
  <message>
   <source>&amp;Dates and priorities…</source>
   <translation>&amp;Termine und Vorrang…</translation>
  </message>
  <message>
   <source>Me&amp;nd what is unsound</source>
   <translation>&amp;Beheben, was fehlerhaft ist</translation>
  </message>
 </context>
 <context>
  <name>ModelForm</name>
  <message>
   <source>Its outline in lists and pages</source>
   <translation>Sein Umriss in Listen und Seiten</translation>
  </message>
  <message>
   <source>Finish by</source>
   <translation>Fertig bis</translation>
  </message>
  <message>
   <source>Date of the model</source>
   <translation>Datum des Modells</translation>
  </message>
  <message>
   <source>How much a day late of this model weighs against a day of another</source>
   <translation>Wie viel ein Tag Verspätung dieses Modells gegen einen Tag eines anderen wiegt</translation>
  </message>
  <message>
   <source>As early as it can be</source>
   <translation>So früh wie möglich</translation>
  </message>
  <message>
   <source>Others of its project fill the gaps while its paint dries</source>
   <translation>Andere seines Projekts füllen die Lücken, während seine Farbe trocknet</translation>
  </message>
  <message>
   <source>Begin no other before it is finished</source>
   <translation>Kein anderes beginnen, bevor es fertig ist</translation>
  </message>
  <message>
   <source>It shows what works, and how long it takes, before the rest follow</source>
   <translation>Es zeigt, was geht und wie lange es dauert, bevor die übrigen folgen</translation>
  </message>
  <message>
   <source>Size of the real thing</source>
   <translation>Größe des Originals</translation>
  </message>
  <message>
   <source>With the scale, it gives the areas that were not measured</source>
   <translation>Daraus und aus dem Maßstab folgen die nicht gemessenen Flächen</translation>
  </message>
  <message>
   <source>Try them together first</source>
   <translation>Erst trocken zusammensetzen</translation>
  </message>
  <message>
   <source>Model</source>
   <translation>Modell</translation>
  </message>
  <message>
   <source>Scale</source>
   <translation>Maßstab</translation>
  </message>
  <message>
   <source>Kind</source>
   <translation>Art</translation>
  </message>
  <message>
   <source>Weight</source>
   <translation>Gewicht</translation>
  </message>
  <message>
   <source>Length</source>
   <translation>Länge</translation>
  </message>
  <message>
   <source>Width</source>
   <translation>Breite</translation>
  </message>
  <message>
   <source>Height</source>
   <translation>Höhe</translation>
  </message>
  <message>
   <source>{parts} are painted apart and joined later: try them together dry before painting. Paint in a joint is hard to remove. (common practice, no source)</source>
   <translation>{parts} werden getrennt bemalt und später zusammengeklebt: vor dem Bemalen trocken zusammensetzen. Farbe in einer Fuge ist schwer herauszubekommen. (gängige Praxis, ohne Quelle)</translation>
  </message>
 </context>
 <context>
  <name>MomentsModel</name>
  <message>
   <source>When</source>
   <translation>Wann</translation>
  </message>
  <message>
   <source>What, and by which film</source>
   <translation>Was, und durch welchen Film</translation>
  </message>
  <message>
   <source>Planned</source>
   <translation>Verplant</translation>
  </message>
  <message>
   <source>Course</source>
   <translation>Verlauf</translation>
  </message>
  <message>
   <source>{what}
{film}: {state}</source>
   <translation>{what}
{film}: {state}</translation>
  </message>
  <message>
   <source>no place</source>
   <translation>kein Platz</translation>
  </message>
  <message>
   <source>closed {time}</source>
   <translation>geschlossen {time}</translation>
  </message>
  <message>
   <source>closes {time}</source>
   <translation>schließt {time}</translation>
  </message>
  <message>
   <source>due since {time}</source>
   <translation>fällig seit {time}</translation>
  </message>
  <message>
   <source>look {time}</source>
   <translation>nachsehen {time}</translation>
  </message>
  <message>
   <source>open since {time}</source>
   <translation>offen seit {time}</translation>
  </message>
  <message>
   <source>opens {time}</source>
   <translation>öffnet {time}</translation>
  </message>
  <message>
   <source>{when}
in {length}</source>
   <translation>{when}
in {length}</translation>
  </message>
 </context>
 <context>
  <name>MovedPanel</name>
  <message>
   <source>Change the air or the evenings, and see what it does.</source>
   <translation>Ändern Sie Luft oder Abende, und sehen Sie, was es bewirkt.</translation>
  </message>
  <message>
   <source>What moved</source>
   <translation>Was sich verschoben hat</translation>
  </message>
  <message>
   <source>Show &amp;all that moved</source>
   <translation>&amp;Alles Verschobene zeigen</translation>
  </message>
  <message>
   <source>{cause}:</source>
   <translation>{cause}:</translation>
  </message>
  <message>
   <source>nothing moved to another evening.</source>
   <translation>nichts ist auf einen anderen Abend gerückt.</translation>
  </message>
 </context>
 <context>
  <name>NameDialog</name>
  <message>
   <source>&amp;Name</source>
   <translation>&amp;Name</translation>
  </message>
 </context>
 <context>
  <name>NetworkDrawing</name>
  <message>
   <source>What waits for what, drawn; the tree says the same in words</source>
   <translation>Was worauf wartet, gezeichnet; der Baum sagt dasselbe in Worten</translation>
  </message>
  <message>
   <source>waits for {steps}</source>
   <translation>wartet auf {steps}</translation>
  </message>
  <message>
   <source>sets the end</source>
   <translation>bestimmt das Ende</translation>
  </message>
  <message>
   <source>can wait {length}</source>
   <translation>kann {length} warten</translation>
  </message>
 </context>
 <context>
  <name>NetworkPanel</name>
  <message>
   <source>What waits for what</source>
   <translation>Was worauf wartet</translation>
  </message>
  <message>
   <source>Choose a model to see its steps here.</source>
   <translation>Wählen Sie ein Modell, um seine Schritte zu sehen.</translation>
  </message>
  <message>
   <source>What waits for what: {model}</source>
   <translation>Was worauf wartet: {model}</translation>
  </message>
  <message>
   <source>Heavy frames set the end: a minute later there is a minute later for the whole project.</source>
   <translation>Dicke Rahmen bestimmen das Ende: Eine Minute später dort ist eine Minute später für das ganze Projekt.</translation>
  </message>
  <message>
   <source>This model has time to spare.</source>
   <translation>Dieses Modell hat Zeit übrig.</translation>
  </message>
 </context>
 <context>
  <name>NoBook</name>
  <message>
   <source>No book is open</source>
   <translation>Kein Buch ist offen</translation>
  </message>
 </context>
 <context>
  <name>NoteDialog</name>
  <message>
   <source>Note</source>
   <translation>Notiz</translation>
  </message>
 </context>
 <context>
  <name>OnceForm</name>
  <message>
   <source>Date</source>
   <translation>Datum</translation>
  </message>
  <message>
   <source>From</source>
   <translation>Von</translation>
  </message>
  <message>
   <source>To</source>
   <translation>Bis</translation>
  </message>
  <message>
   <source>One session more</source>
   <translation>Eine Sitzung mehr</translation>
  </message>
  <message>
   <source>bench time on {day} {start}–{end}</source>
   <translation>Bastelzeit am {day} {start}–{end}</translation>
  </message>
 </context>
 <context>
  <name>OptionDialog</name>
  <message>
   <source>new option</source>
   <translation>neue Option</translation>
  </message>
  <message>
   <source>used by default</source>
   <translation>gilt von sich aus</translation>
  </message>
 </context>
 <context>
  <name>OptionsField</name>
  <message>
   <source>This sequence has no options.</source>
   <translation>Dieser Ablauf hat keine Optionen.</translation>
  </message>
 </context>
 <context>
  <name>OrderDialog</name>
  <message>
   <source>Change</source>
   <translation>Änderung</translation>
  </message>
  <message>
   <source>&amp;Change</source>
   <translation>Ä&amp;nderung</translation>
  </message>
  <message>
   <source>&amp;Models</source>
   <translation>&amp;Modelle</translation>
  </message>
  <message>
   <source>&amp;Apply to {n}</source>
   <translation>Auf {n} an&amp;wenden</translation>
  </message>
  <message>
   <source>&amp;Apply to all {n}</source>
   <translation>Auf alle {n} an&amp;wenden</translation>
  </message>
  <message>
   <source>take out again: {change}</source>
   <translation>wieder herausnehmen: {change}</translation>
  </message>
  <message>
   <source>{change} ({n} of {all})</source>
   <translation>{change} ({n} von {all})</translation>
  </message>
  <message>
   <source>No model is chosen whose order could be changed.</source>
   <translation>Es ist kein Modell gewählt, dessen Ablauf sich ändern ließe.</translation>
  </message>
  <message>
   <source>choose at least one model</source>
   <translation>mindestens ein Modell wählen</translation>
  </message>
 </context>
 <context>
  <name>OtherWorkDialog</name>
  <message>
   <source>I did something else</source>
   <translation>Ich habe etwas anderes gemacht</translation>
  </message>
  <message>
   <source>What was painted, and on what</source>
   <translation>Was wurde gemalt, und worauf</translation>
  </message>
  <message>
   <source>&amp;Note it</source>
   <translation>&amp;Vermerken</translation>
  </message>
  <message>
   <source>Cancel</source>
   <translation>Abbrechen</translation>
  </message>
  <message>
   <source>What was painted, and on what?</source>
   <translation>Was wurde gemalt, und worauf?</translation>
  </message>
  <message>
   <source>Planned or not: the colour, “on”, then models with their parts; between commas also the tool, the kind of work, minutes and millilitres.</source>
   <translation>Geplant oder nicht: die Farbe, „auf“, dann Modelle mit ihren Teilen; zwischen Kommas auch Werkzeug, Art der Arbeit, Minuten und Milliliter.</translation>
  </message>
  <message>
   <source>For example: {line}</source>
   <translation>Zum Beispiel: {line}</translation>
  </message>
 </context>
 <context>
  <name>OutlineModel</name>
  <message>
   <source>past: </source>
   <translation>vorbei: </translation>
  </message>
  <message>
   <source>When</source>
   <translation>Wann</translation>
  </message>
  <message>
   <source>What</source>
   <translation>Was</translation>
  </message>
  <message>
   <source>Why then</source>
   <translation>Warum dann</translation>
  </message>
 </context>
 <context>
  <name>PacePanel</name>
  <message>
   <source>App&amp;ly all that is sure</source>
   <translation>Alles Siche&amp;re anwenden</translation>
  </message>
  <message>
   <source>Pace</source>
   <translation>Tempo</translation>
  </message>
  <message>
   <source>Nothing yet: log work with its real minutes, and look at films.</source>
   <translation>Noch nichts: Notieren Sie Arbeit mit ihren wirklichen Minuten, und sehen Sie nach Filmen.</translation>
  </message>
  <message>
   <source>Applied only when you agree; can be undone.</source>
   <translation>Gilt nur, wenn Sie zustimmen; es lässt sich rückgängig machen.</translation>
  </message>
  <message>
   <source>Apply: {what}</source>
   <translation>Anwenden: {what}</translation>
  </message>
  <message>
   <source>Apply</source>
   <translation>Anwenden</translation>
  </message>
 </context>
 <context>
  <name>PartForm</name>
  <message>
   <source>none</source>
   <translation>keiner</translation>
  </message>
  <message>
   <source>What it is held by while painted: a skewer, a clip, a cork</source>
   <translation>Woran es beim Bemalen gehalten wird: Spieß, Klammer, Korken</translation>
  </message>
  <message>
   <source>Snaps in under stress</source>
   <translation>Rastet unter Spannung ein</translation>
  </message>
  <message>
   <source>Strong thinner cracks such parts</source>
   <translation>Starke Verdünnung lässt solche Teile reißen</translation>
  </message>
  <message>
   <source>Join by a step</source>
   <translation>Durch einen Schritt verbinden</translation>
  </message>
  <message>
   <source>Adds a step that joins them</source>
   <translation>Fügt einen Schritt hinzu, der sie zusammenklebt</translation>
  </message>
  <message>
   <source>Glue on before painting</source>
   <translation>Vor dem Bemalen ankleben</translation>
  </message>
  <message>
   <source>Makes one part of them; the join goes</source>
   <translation>Macht ein Teil daraus; das Zusammenkleben entfällt</translation>
  </message>
  <message>
   <source>Part</source>
   <translation>Teil</translation>
  </message>
  <message>
   <source>Held by</source>
   <translation>Gehalten an</translation>
  </message>
  <message>
   <source>Drying places</source>
   <translation>Trockenplätze</translation>
  </message>
  <message>
   <source>Material</source>
   <translation>Material</translation>
  </message>
  <message>
   <source>Apart and joined</source>
   <translation>Getrennt und verbunden</translation>
  </message>
  <message>
   <source>With the part</source>
   <translation>Mit dem Teil</translation>
  </message>
 </context>
 <context>
  <name>PhotoField</name>
  <message>
   <source>Choose…</source>
   <translation>Wählen …</translation>
  </message>
  <message>
   <source>Without</source>
   <translation>Ohne</translation>
  </message>
  <message>
   <source>missing</source>
   <translation>fehlt</translation>
  </message>
  <message>
   <source>none</source>
   <translation>keines</translation>
  </message>
  <message>
   <source>photo</source>
   <translation>Foto</translation>
  </message>
  <message>
   <source>Photo of the card</source>
   <translation>Foto der Karte</translation>
  </message>
  <message>
   <source>Pictures ({suffixes})</source>
   <translation>Bilder ({suffixes})</translation>
  </message>
 </context>
 <context>
  <name>PhotoStrip</name>
  <message>
   <source>Photos</source>
   <translation>Fotos</translation>
  </message>
  <message>
   <source>photo {n}</source>
   <translation>Foto {n}</translation>
  </message>
  <message>
   <source>photo {n} is missing</source>
   <translation>Foto {n} fehlt</translation>
  </message>
 </context>
 <context>
  <name>PlaceForm</name>
  <message>
   <source>by its measures, or its share</source>
   <translation>nach seinen Maßen oder seinem Anteil</translation>
  </message>
  <message>
   <source>Raised and recessed detail adds area</source>
   <translation>Erhabenes und Vertieftes vergrößert die Fläche</translation>
  </message>
  <message>
   <source>none of its own</source>
   <translation>kein eigener</translation>
  </message>
  <message>
   <source>Part of a box of the model's real size, all round; the kind brings it, assumed</source>
   <translation>Anteil an einem Quader der wahren Größe des Modells, ringsum; die Art bringt ihn mit, angenommen</translation>
  </message>
  <message>
   <source>Paint it apart</source>
   <translation>Getrennt bemalen</translation>
  </message>
  <message>
   <source>Makes a part of its own of it, joined by a step at the end</source>
   <translation>Macht ein eigenes Teil daraus, am Ende durch einen Schritt verbunden</translation>
  </message>
  <message>
   <source>Place</source>
   <translation>Stelle</translation>
  </message>
  <message>
   <source>Faces</source>
   <translation>Zeigt nach</translation>
  </message>
  <message>
   <source>Area</source>
   <translation>Fläche</translation>
  </message>
  <message>
   <source>Detail</source>
   <translation>Gliederung</translation>
  </message>
  <message>
   <source>Share</source>
   <translation>Anteil</translation>
  </message>
  <message>
   <source>Measures</source>
   <translation>Maße</translation>
  </message>
 </context>
 <context>
  <name>PlacesModel</name>
  <message>
   <source>{place}, {model}: {state}</source>
   <translation>{place}, {model}: {state}</translation>
  </message>
  <message>
   <source>{start}, {length}: {work}</source>
   <translation>{start}, {length}: {work}</translation>
  </message>
  <message>
   <source>then wet: {state} {time}</source>
   <translation>danach nass: {state} {time}</translation>
  </message>
  <message>
   <source>ready</source>
   <translation>bereit</translation>
  </message>
  <message>
   <source>Click, or Delete, takes it back.</source>
   <translation>Ein Klick oder Entf nimmt es zurück.</translation>
  </message>
  <message>
   <source>all of it</source>
   <translation>alles</translation>
  </message>
  <message>
   <source>{place} of {part}</source>
   <translation>{place} von {part}</translation>
  </message>
  <message>
   <source>{model}, coat {n}</source>
   <translation>{model}, Schicht {n}</translation>
  </message>
  <message>
   <source>{model}, part {n} of {count}</source>
   <translation>{model}, Teil {n} von {count}</translation>
  </message>
  <message>
   <source>{model} · begun</source>
   <translation>{model} · begonnen</translation>
  </message>
  <message>
   <source>begun {time}</source>
   <translation>begonnen {time}</translation>
  </message>
  <message>
   <source>all</source>
   <translation>alle</translation>
  </message>
  <message>
   <source>Click to note every row as done</source>
   <translation>Klick trägt jede Zeile als fertig ein</translation>
  </message>
  <message>
   <source>{place}: click to tick it on every model</source>
   <translation>{place}: ein Klick hakt es an jedem Modell ab</translation>
  </message>
 </context>
 <context>
  <name>PlacesTable</name>
  <message>
   <source>Take back</source>
   <translation>Zurücknehmen</translation>
  </message>
  <message>
   <source>&amp;Done</source>
   <translation>&amp;Erledigt</translation>
  </message>
  <message>
   <source>&amp;Take back</source>
   <translation>&amp;Zurücknehmen</translation>
  </message>
 </context>
 <context>
  <name>PlanList</name>
  <message>
   <source>The timeline as a list</source>
   <translation>Der Zeitstrahl als Liste</translation>
  </message>
 </context>
 <context>
  <name>PlanOverview</name>
  <message>
   <source>Overview of the plan</source>
   <translation>Übersicht des Plans</translation>
  </message>
  <message>
   <source>One lane a model. The list at the work level says the same in words.</source>
   <translation>Eine Bahn je Modell. Die Liste unter „Arbeit“ sagt dasselbe in Worten.</translation>
  </message>
 </context>
 <context>
  <name>PointsEditor</name>
  <message>
   <source>Add a point</source>
   <translation>Punkt hinzufügen</translation>
  </message>
  <message>
   <source>Full line: temperature. Broken line: humidity.</source>
   <translation>Volle Linie: Temperatur. Gestrichelte Linie: Feuchte.</translation>
  </message>
 </context>
 <context>
  <name>PortionsEditor</name>
  <message>
   <source>Add a coating</source>
   <translation>Mittel hinzufügen</translation>
  </message>
  <message>
   <source>2 : 3, or 30 % : 70 %</source>
   <translation>2 : 3 oder 30 % : 70 %</translation>
  </message>
  <message>
   <source>or in &amp;one line</source>
   <translation>oder in &amp;einer Zeile</translation>
  </message>
  <message>
   <source>names {typed} parts, but there are {rows} coatings</source>
   <translation>nennt {typed} Teile, es sind aber {rows} Mittel</translation>
  </message>
 </context>
 <context>
  <name>ProjectForm</name>
  <message>
   <source>Finish by</source>
   <translation>Fertig bis</translation>
  </message>
  <message>
   <source>Not before</source>
   <translation>Nicht vor</translation>
  </message>
  <message>
   <source>How much a day late of this project weighs against a day of another</source>
   <translation>Wie viel ein Tag Verspätung dieses Projekts gegen einen Tag eines anderen zählt</translation>
  </message>
  <message>
   <source>One vehicle is finished ahead of the batch, so that it shows what to do better</source>
   <translation>Ein Fahrzeug wird vor den anderen fertig, damit es zeigt, was besser zu machen ist</translation>
  </message>
  <message>
   <source>Project</source>
   <translation>Projekt</translation>
  </message>
  <message>
   <source>Weight</source>
   <translation>Gewicht</translation>
  </message>
  <message>
   <source>One vehicle first</source>
   <translation>Ein Fahrzeug zuerst</translation>
  </message>
  <message>
   <source>Note</source>
   <translation>Notiz</translation>
  </message>
  <message>
   <source>none</source>
   <translation>keines</translation>
  </message>
  <message>
   <source>{n} models in one batch get tedious, and a mistake is made {n} times. Let one go first, or make two projects. (common practice, no source)</source>
   <translation>{n} Modelle auf einmal werden eintönig, und ein Fehler geschieht {n}-mal. Lassen Sie eins vorausgehen, oder machen Sie zwei Projekte daraus. (gängige Praxis, ohne Quelle)</translation>
  </message>
 </context>
 <context>
  <name>ProjectPanel</name>
  <message>
   <source>Projects; the check mark says which are planned</source>
   <translation>Projekte; das Häkchen sagt, welche geplant werden</translation>
  </message>
  <message>
   <source>Finish &amp;by</source>
   <translation>&amp;Fertig bis</translation>
  </message>
  <message>
   <source>Date of the project</source>
   <translation>Datum des Projekts</translation>
  </message>
  <message>
   <source>How much a day late of this project weighs against a day of another</source>
   <translation>Wie viel ein Tag Verspätung dieses Projekts gegen einen Tag eines anderen zählt</translation>
  </message>
  <message>
   <source>None yet</source>
   <translation>Noch keine</translation>
  </message>
  <message>
   <source>Weight</source>
   <translation>Gewicht</translation>
  </message>
  <message>
   <source>Projects</source>
   <translation>Projekte</translation>
  </message>
  <message>
   <source>set aside</source>
   <translation>beiseitegelegt</translation>
  </message>
 </context>
 <context>
  <name>ProjectsModel</name>
  <message>
   <source>planned</source>
   <translation>geplant</translation>
  </message>
  <message>
   <source>set aside</source>
   <translation>beiseitegelegt</translation>
  </message>
 </context>
 <context>
  <name>ReachedDialog</name>
  <message>
   <source>Day on which the last of it was done</source>
   <translation>Tag, an dem das Letzte davon erledigt war</translation>
  </message>
  <message>
   <source>on</source>
   <translation>am</translation>
  </message>
  <message>
   <source>So far</source>
   <translation>So weit</translation>
  </message>
  <message>
   <source>&amp;Models</source>
   <translation>&amp;Modelle</translation>
  </message>
  <message>
   <source>&amp;They are</source>
   <translation>&amp;Sie sind</translation>
  </message>
  <message>
   <source>&amp;Done</source>
   <translation>&amp;Erledigt</translation>
  </message>
  <message>
   <source>Without a day: a week ago, so that all of it is dry</source>
   <translation>Ohne Tag: vor einer Woche, sodass alles trocken ist</translation>
  </message>
  <message>
   <source>&amp;Note it</source>
   <translation>&amp;Notieren</translation>
  </message>
  <message>
   <source>Tick the models with the space bar.</source>
   <translation>Die Modelle mit der Leertaste ankreuzen.</translation>
  </message>
 </context>
 <context>
  <name>RoomFrame</name>
  <message>
   <source>Pages of {room}</source>
   <translation>Seiten von {room}</translation>
  </message>
 </context>
 <context>
  <name>RoomView</name>
  <message>
   <source>How long each coating takes to each state</source>
   <translation>Wie lange jedes Mittel bis zu jedem Zustand braucht</translation>
  </message>
  <message>
   <source>Drying times</source>
   <translation>Trockenzeiten</translation>
  </message>
  <message>
   <source>&amp;Dries at</source>
   <translation>Trock&amp;net in</translation>
  </message>
  <message>
   <source>&amp;Laid by</source>
   <translation>&amp;Aufgetragen um</translation>
  </message>
  <message>
   <source>{coating}, laid by {time}</source>
   <translation>{coating}, aufgetragen um {time}</translation>
  </message>
  <message>
   <source>{time}: {temperature}, {humidity:.0f} % RH</source>
   <translation>{time}: {temperature}, {humidity:.0f} % r. F.</translation>
  </message>
  <message>
   <source>Bone-dry air has no dew point.</source>
   <translation>Völlig trockene Luft hat keinen Taupunkt.</translation>
  </message>
  <message>
   <source>⚠ Only {margin:.1f} °C above the dew point; at least 3 °C is needed: warm the model, or dry the air.</source>
   <translation>⚠ Nur {margin:.1f} °C über dem Taupunkt; mindestens 3 °C sind nötig: Wärmen Sie das Modell, oder trocknen Sie die Luft.</translation>
  </message>
  <message>
   <source>{margin:.1f} °C above the dew point; 3 °C is enough.</source>
   <translation>{margin:.1f} °C über dem Taupunkt; 3 °C genügen.</translation>
  </message>
 </context>
 <context>
  <name>RuleDialog</name>
  <message>
   <source>By the rule {rule}</source>
   <translation>Nach der Regel {rule}</translation>
  </message>
 </context>
 <context>
  <name>RuleLine</name>
  <message>
   <source>Bench time begins</source>
   <translation>Bastelzeit beginnt</translation>
  </message>
  <message>
   <source>Bench time ends</source>
   <translation>Bastelzeit endet</translation>
  </message>
  <message>
   <source>by rule: {rule}</source>
   <translation>nach Regel: {rule}</translation>
  </message>
  <message>
   <source>Remove these evenings</source>
   <translation>Diese Abende entfernen</translation>
  </message>
  <message>
   <source>Choose at least one day, or remove the line.</source>
   <translation>Wählen Sie mindestens einen Tag, oder entfernen Sie die Zeile.</translation>
  </message>
 </context>
 <context>
  <name>SaveDialog</name>
  <message>
   <source>{project}: its model with the most steps</source>
   <translation>{project}: das Modell mit den meisten Schritten</translation>
  </message>
  <message>
   <source>{project}: {model}</source>
   <translation>{project}: {model}</translation>
  </message>
  <message>
   <source>Save</source>
   <translation>Sichern</translation>
  </message>
  <message>
   <source>&amp;Finishing order of</source>
   <translation>&amp;Reihenfolge der Schritte von</translation>
  </message>
  <message>
   <source>&amp;Name of the sequence</source>
   <translation>&amp;Name des Ablaufs</translation>
  </message>
  <message>
   <source>N&amp;ote</source>
   <translation>N&amp;otiz</translation>
  </message>
  <message>
   <source>no model has steps yet; give one some first</source>
   <translation>noch hat kein Modell Schritte; geben Sie zuerst einem welche</translation>
  </message>
 </context>
 <context>
  <name>ScenarioModel</name>
  <message>
   <source>{name}. {told}</source>
   <translation>{name}. {told}</translation>
  </message>
  <message>
   <source>Present plan</source>
   <translation>Jetziger Plan</translation>
  </message>
  <message>
   <source>cannot be</source>
   <translation>geht nicht</translation>
  </message>
  <message>
   <source>planning…</source>
   <translation>wird geplant …</translation>
  </message>
  <message>
   <source>{told}, first result</source>
   <translation>{told}, erstes Ergebnis</translation>
  </message>
 </context>
 <context>
  <name>SequenceStepDialog</name>
  <message>
   <source>Marks</source>
   <translation>Merkmale</translation>
  </message>
  <message>
   <source>Options</source>
   <translation>Optionen</translation>
  </message>
  <message>
   <source>Only &amp;with all of</source>
   <translation>Nur mit all&amp;en von</translation>
  </message>
  <message>
   <source>and with &amp;none of</source>
   <translation>und mit keine&amp;r von</translation>
  </message>
  <message>
   <source>Work</source>
   <translation>Arbeit</translation>
  </message>
  <message>
   <source>Parts, or part/place, with “;” between; “*” is every part, “*/roof” the roof of any, “* but wheels; tracks” all but those</source>
   <translation>Teile oder Teil/Stelle, mit „;“ dazwischen; „*“ heißt jedes Teil, „*/roof“ das Dach eines jeden, „* but wheels; tracks“ alle außer diesen</translation>
  </message>
  <message>
   <source>Minutes</source>
   <translation>Minuten</translation>
  </message>
  <message>
   <source>can be interrupted</source>
   <translation>lässt sich unterbrechen</translation>
  </message>
  <message>
   <source>have a look</source>
   <translation>nachsehen</translation>
  </message>
 </context>
 <context>
  <name>SequencesView</name>
  <message>
   <source>With the &amp;usual options only</source>
   <translation>Nur mit den &amp;üblichen Optionen</translation>
  </message>
  <message>
   <source>Steps</source>
   <translation>Schritte</translation>
  </message>
  <message>
   <source>Options</source>
   <translation>Optionen</translation>
  </message>
  <message>
   <source>Colours</source>
   <translation>Farben</translation>
  </message>
  <message>
   <source>Changes offered</source>
   <translation>Angebotene Änderungen</translation>
  </message>
  <message>
   <source>Sequences</source>
   <translation>Abläufe</translation>
  </message>
  <message>
   <source>No sequence.</source>
   <translation>Kein Ablauf.</translation>
  </message>
  <message>
   <source>Sequence</source>
   <translation>Ablauf</translation>
  </message>
  <message>
   <source>From</source>
   <translation>Von</translation>
  </message>
  <message>
   <source>your own</source>
   <translation>Ihr eigener</translation>
  </message>
  <message>
   <source>built in</source>
   <translation>eingebaut</translation>
  </message>
  <message>
   <source>Models</source>
   <translation>Modelle</translation>
  </message>
  <message>
   <source>Offered</source>
   <translation>Angeboten</translation>
  </message>
  <message>
   <source>Note</source>
   <translation>Notiz</translation>
  </message>
  <message>
   <source>Give to models…</source>
   <translation>Modellen geben …</translation>
  </message>
  <message>
   <source>Save from a model…</source>
   <translation>Von einem Modell sichern …</translation>
  </message>
  <message>
   <source>Duplicate…</source>
   <translation>Verdoppeln …</translation>
  </message>
  <message>
   <source>Rename…</source>
   <translation>Umbenennen …</translation>
  </message>
  <message>
   <source>Note and size…</source>
   <translation>Notiz und Größe …</translation>
  </message>
  <message>
   <source>Remove</source>
   <translation>Entfernen</translation>
  </message>
  <message>
   <source>Steps of the sequence</source>
   <translation>Schritte des Ablaufs</translation>
  </message>
  <message>
   <source>No step.</source>
   <translation>Kein Schritt.</translation>
  </message>
  <message>
   <source>Step</source>
   <translation>Schritt</translation>
  </message>
  <message>
   <source>Only</source>
   <translation>Nur</translation>
  </message>
  <message>
   <source>Work</source>
   <translation>Arbeit</translation>
  </message>
  <message>
   <source>Lays</source>
   <translation>Trägt auf</translation>
  </message>
  <message>
   <source>Where</source>
   <translation>Wo</translation>
  </message>
  <message>
   <source>Takes</source>
   <translation>Dauert</translation>
  </message>
  <message>
   <source>Change…</source>
   <translation>Ändern …</translation>
  </message>
  <message>
   <source>Earlier</source>
   <translation>Früher</translation>
  </message>
  <message>
   <source>Later</source>
   <translation>Später</translation>
  </message>
  <message>
   <source>Copy behind it</source>
   <translation>Dahinter kopieren</translation>
  </message>
  <message>
   <source>Options of the sequence</source>
   <translation>Optionen des Ablaufs</translation>
  </message>
  <message>
   <source>No options: every model gets every step it has parts for.</source>
   <translation>Keine Optionen: Jedes Modell bekommt jeden Schritt, für den es Teile hat.</translation>
  </message>
  <message>
   <source>Option</source>
   <translation>Option</translation>
  </message>
  <message>
   <source>Choice</source>
   <translation>Auswahl</translation>
  </message>
  <message>
   <source>Usual</source>
   <translation>Üblich</translation>
  </message>
  <message>
   <source>yes</source>
   <translation>ja</translation>
  </message>
  <message>
   <source>Add option…</source>
   <translation>Option hinzufügen …</translation>
  </message>
  <message>
   <source>Colours of the sequence</source>
   <translation>Farben des Ablaufs</translation>
  </message>
  <message>
   <source>No colours.</source>
   <translation>Keine Farben.</translation>
  </message>
  <message>
   <source>Colour</source>
   <translation>Farbe</translation>
  </message>
  <message>
   <source>Usually</source>
   <translation>Üblich</translation>
  </message>
  <message>
   <source>Add colour…</source>
   <translation>Farbe hinzufügen …</translation>
  </message>
  <message>
   <source>Changes offered to the models that came from it</source>
   <translation>Änderungen für Modelle, die daraus entstanden sind</translation>
  </message>
  <message>
   <source>Every model from this sequence is up to date with it.</source>
   <translation>Jedes Modell aus diesem Ablauf entspricht ihm.</translation>
  </message>
  <message>
   <source>Model</source>
   <translation>Modell</translation>
  </message>
  <message>
   <source>What</source>
   <translation>Was</translation>
  </message>
  <message>
   <source>How</source>
   <translation>Wie</translation>
  </message>
  <message>
   <source>Take over for this model</source>
   <translation>Für dieses Modell übernehmen</translation>
  </message>
  <message>
   <source>Take over for all</source>
   <translation>Für alle übernehmen</translation>
  </message>
  <message>
   <source>Leave this model as it is</source>
   <translation>Dieses Modell so lassen</translation>
  </message>
  <message>
   <source>Changes offered ({n})</source>
   <translation>Angebotene Änderungen ({n})</translation>
  </message>
  <message>
   <source>△ to 1 model</source>
   <translation>△ für 1 Modell</translation>
  </message>
  <message>
   <source>△ to {n} models</source>
   <translation>△ für {n} Modelle</translation>
  </message>
  <message>
   <source>asked each time</source>
   <translation>jedes Mal gefragt</translation>
  </message>
  <message>
   <source>Nothing is on the table yet; add a model first.</source>
   <translation>Noch steht nichts auf dem Tisch; fügen Sie zuerst ein Modell hinzu.</translation>
  </message>
  <message>
   <source>{name}, mine</source>
   <translation>{name}, meiner</translation>
  </message>
  <message>
   <source>Duplicate a sequence</source>
   <translation>Ablauf verdoppeln</translation>
  </message>
  <message>
   <source>Rename a sequence</source>
   <translation>Ablauf umbenennen</translation>
  </message>
 </context>
 <context>
  <name>Session</name>
  <message>
   <source>Opening {book}…</source>
   <translation>{book} wird geöffnet …</translation>
  </message>
  <message>
   <source>This book is open elsewhere as well ({who}).</source>
   <translation>Dieses Buch ist auch anderswo geöffnet ({who}).</translation>
  </message>
  <message>
   <source>This book can only be read here: {why}.</source>
   <translation>Dieses Buch lässt sich hier nur lesen: {why}.</translation>
  </message>
  <message>
   <source>undo {name}</source>
   <translation>rückgängig: {name}</translation>
  </message>
  <message>
   <source>redo {name}</source>
   <translation>wiederholt: {name}</translation>
  </message>
  <message>
   <source>taken back: {name}</source>
   <translation>zurückgenommen: {name}</translation>
  </message>
  <message>
   <source>restored: {name}</source>
   <translation>wiederhergestellt: {name}</translation>
  </message>
  <message>
   <source>is being written by another program</source>
   <translation>wird gerade von einem anderen Programm geschrieben</translation>
  </message>
  <message>
   <source>“{name}” is done as soon as the book can be written.</source>
   <translation>„{name}“ geschieht, sobald das Buch geschrieben werden kann.</translation>
  </message>
  <message>
   <source>another program changed the book, so “{name}” was not done</source>
   <translation>ein anderes Programm hat das Buch geändert, daher wurde „{name}“ nicht ausgeführt</translation>
  </message>
  <message>
   <source>Saved to {path}.</source>
   <translation>Gespeichert als {path}.</translation>
  </message>
  <message>
   <source>Saved to {path}, without the edits of before: undo begins anew.</source>
   <translation>Gespeichert als {path}, ohne die früheren Änderungen: Rückgängig beginnt von vorn.</translation>
  </message>
  <message>
   <source>Going on with {path}.</source>
   <translation>Weiter mit {path}.</translation>
  </message>
  <message>
   <source>this is being tried already</source>
   <translation>das wird schon ausprobiert</translation>
  </message>
 </context>
 <context>
  <name>SetUpLine</name>
  <message>
   <source>{name} · {length}</source>
   <translation>{name} · {length}</translation>
  </message>
  <message>
   <source>{sentence} · {parts}</source>
   <translation>{sentence} · {parts}</translation>
  </message>
  <message>
   <source>{sentence} · {fill}</source>
   <translation>{sentence} · {fill}</translation>
  </message>
  <message>
   <source>{start}: {sentence}</source>
   <translation>{start}: {sentence}</translation>
  </message>
 </context>
 <context>
  <name>ShelfField</name>
  <message>
   <source>Paints that you have</source>
   <translation>Farben, die da sind</translation>
  </message>
  <message>
   <source>another: acrylic, olive green, matte, 17 ml, then Enter</source>
   <translation>weitere: Acryl, olivgrün, matt, 17 ml, dann Eingabe</translation>
  </message>
  <message>
   <source>Another paint: kind, colour, finish, millilitres, code</source>
   <translation>Weitere Farbe: Art, Farbton, Glanz, Milliliter, Nummer</translation>
  </message>
  <message>
   <source>&amp;Read a table…</source>
   <translation>Tabelle &amp;lesen…</translation>
  </message>
  <message>
   <source>CSV with a first line such as kind;colour;finish;ml;code</source>
   <translation>CSV mit einer ersten Zeile wie Art;Farbe;Glanz;ml;Nummer</translation>
  </message>
  <message>
   <source>A table of your paints</source>
   <translation>Eine Tabelle eigener Farben</translation>
  </message>
  <message>
   <source>Tables ({pattern});;All files (*)</source>
   <translation>Tabellen ({pattern});;Alle Dateien (*)</translation>
  </message>
 </context>
 <context>
  <name>ShoppingView</name>
  <message>
   <source> %</source>
   <translation> %</translation>
  </message>
  <message>
   <source>Spare margin</source>
   <translation>Zuschlag</translation>
  </message>
  <message>
   <source>Bought on top of what is needed; then whole bottles</source>
   <translation>Wird über den Bedarf hinaus gekauft; dann ganze Flaschen</translation>
  </message>
  <message>
   <source>&amp;All that the plan takes</source>
   <translation>&amp;Alles, was der Plan braucht</translation>
  </message>
  <message>
   <source>Spare &amp;margin</source>
   <translation>&amp;Zuschlag</translation>
  </message>
  <message>
   <source>To buy</source>
   <translation>Zu kaufen</translation>
  </message>
  <message>
   <source>Enough for all?</source>
   <translation>Genug für alle?</translation>
  </message>
  <message>
   <source>Touch-ups</source>
   <translation>Ausbessern</translation>
  </message>
  <message>
   <source>No area</source>
   <translation>Ohne Fläche</translation>
  </message>
  <message>
   <source>Shopping</source>
   <translation>Einkauf</translation>
  </message>
  <message>
   <source>What to buy</source>
   <translation>Was zu kaufen ist</translation>
  </message>
  <message>
   <source>Nothing to buy.</source>
   <translation>Nichts zu kaufen.</translation>
  </message>
  <message>
   <source>What</source>
   <translation>Was</translation>
  </message>
  <message>
   <source>Buy</source>
   <translation>Kaufen</translation>
  </message>
  <message>
   <source>Runs out</source>
   <translation>Reicht bis</translation>
  </message>
  <message>
   <source>Takes</source>
   <translation>Braucht</translation>
  </message>
  <message>
   <source>There is</source>
   <translation>Vorhanden</translation>
  </message>
  <message>
   <source>Note</source>
   <translation>Notiz</translation>
  </message>
  <message>
   <source>Bought all of it</source>
   <translation>Alles davon gekauft</translation>
  </message>
  <message>
   <source>Bought</source>
   <translation>Gekauft</translation>
  </message>
  <message>
   <source>Bought another amount…</source>
   <translation>Eine andere Menge gekauft …</translation>
  </message>
  <message>
   <source>No colour is planned for more than one model.</source>
   <translation>Keine Farbe ist für mehr als ein Modell geplant.</translation>
  </message>
  <message>
   <source>Colour</source>
   <translation>Farbe</translation>
  </message>
  <message>
   <source>First laid</source>
   <translation>Zuerst aufgetragen</translation>
  </message>
  <message>
   <source>Lacking</source>
   <translation>Fehlt</translation>
  </message>
  <message>
   <source>{colour}, in this order: {models}.</source>
   <translation>{colour}, in dieser Reihenfolge: {models}.</translation>
  </message>
  <message>
   <source>Leftover mixes for touch-ups</source>
   <translation>Mischungsreste zum Ausbessern</translation>
  </message>
  <message>
   <source>No leftover mix is kept; Stock has a place for them.</source>
   <translation>Kein Mischungsrest ist aufgehoben; unter „Vorrat“ ist Platz dafür.</translation>
  </message>
  <message>
   <source>Jar</source>
   <translation>Glas</translation>
  </message>
  <message>
   <source>How much</source>
   <translation>Wie viel</translation>
  </message>
  <message>
   <source>Can be used</source>
   <translation>Verwendbar</translation>
  </message>
  <message>
   <source>Of</source>
   <translation>Wovon</translation>
  </message>
  <message>
   <source>Same as</source>
   <translation>Gleich wie</translation>
  </message>
  <message>
   <source>To touch up {models}.</source>
   <translation>Zum Ausbessern von {models}.</translation>
  </message>
  <message>
   <source>Nothing that is planned has this colour.</source>
   <translation>Nichts Geplantes hat diese Farbe.</translation>
  </message>
  <message>
   <source>Places without an area</source>
   <translation>Stellen ohne Fläche</translation>
  </message>
  <message>
   <source>Every place that gets a coat has an area.</source>
   <translation>Jede Stelle, die eine Schicht bekommt, hat eine Fläche.</translation>
  </message>
  <message>
   <source>Model</source>
   <translation>Modell</translation>
  </message>
  <message>
   <source>Place</source>
   <translation>Stelle</translation>
  </message>
  <message>
   <source>What to do</source>
   <translation>Was zu tun ist</translation>
  </message>
  <message>
   <source>Nothing is planned yet.</source>
   <translation>Noch ist nichts geplant.</translation>
  </message>
  <message>
   <source>Have at hand, not measured: {names}.</source>
   <translation>Bereithalten, nicht gemessen: {names}.</translation>
  </message>
  <message>
   <source>The plan takes nothing from the stock.</source>
   <translation>Der Plan braucht nichts aus dem Vorrat.</translation>
  </message>
  <message>
   <source>The stock is enough.</source>
   <translation>Der Vorrat reicht.</translation>
  </message>
  <message>
   <source>1 thing to buy</source>
   <translation>1 Sache zu kaufen</translation>
  </message>
  <message>
   <source>{n} things to buy</source>
   <translation>{n} Sachen zu kaufen</translation>
  </message>
  <message>
   <source>{things}; the first runs out {when}</source>
   <translation>{things}; die erste geht {when} aus</translation>
  </message>
  <message>
   <source>not planned yet</source>
   <translation>noch nicht geplant</translation>
  </message>
  <message>
   <source>is enough</source>
   <translation>reicht</translation>
  </message>
  <message>
   <source>{name}: {what}.</source>
   <translation>{name}: {what}.</translation>
  </message>
  <message>
   <source>Less than half a bottle is left; get the next in time.</source>
   <translation>Weniger als eine halbe Flasche ist übrig; rechtzeitig die nächste besorgen.</translation>
  </message>
  <message>
   <source>Some places have no area, so it takes more.</source>
   <translation>Einige Stellen haben keine Fläche, es braucht also mehr.</translation>
  </message>
  <message>
   <source>until {day}</source>
   <translation>bis {day}</translation>
  </message>
  <message>
   <source>△ expired {day}</source>
   <translation>△ abgelaufen {day}</translation>
  </message>
  <message>
   <source>&amp;So much</source>
   <translation>&amp;So viel</translation>
  </message>
  <message>
   <source>&amp;Bottles</source>
   <translation>&amp;Flaschen</translation>
  </message>
  <message>
   <source>{name}: the list says {amount}.</source>
   <translation>{name}: Die Liste sagt {amount}.</translation>
  </message>
 </context>
 <context>
  <name>SidesModel</name>
  <message>
   <source>differs</source>
   <translation>anders</translation>
  </message>
  <message>
   <source>the same</source>
   <translation>gleich</translation>
  </message>
  <message>
   <source>Field</source>
   <translation>Feld</translation>
  </message>
  <message>
   <source>Your book says</source>
   <translation>Ihr Buch sagt</translation>
  </message>
  <message>
   <source>The file says</source>
   <translation>Die Datei sagt</translation>
  </message>
 </context>
 <context>
  <name>SplitDialog</name>
  <message>
   <source>Split by places</source>
   <translation>Nach Stellen teilen</translation>
  </message>
  <message>
   <source>Places that get a step of their own</source>
   <translation>Stellen, die einen eigenen Schritt bekommen</translation>
  </message>
  <message>
   <source>Tick the places that shall have a step of their own, right behind.</source>
   <translation>Kreuzen Sie die Stellen an, die gleich dahinter einen eigenen Schritt bekommen sollen.</translation>
  </message>
 </context>
 <context>
  <name>StackView</name>
  <message>
   <source>Coats of this place, the topmost first</source>
   <translation>Schichten dieser Stelle, die oberste zuerst</translation>
  </message>
  <message>
   <source>Coat stack</source>
   <translation>Schichtaufbau</translation>
  </message>
  <message>
   <source>&amp;Model</source>
   <translation>&amp;Modell</translation>
  </message>
  <message>
   <source>P&amp;lace</source>
   <translation>&amp;Stelle</translation>
  </message>
 </context>
 <context>
  <name>StageForm</name>
  <message>
   <source>On</source>
   <translation>An</translation>
  </message>
  <message>
   <source>Stage</source>
   <translation>Arbeitsschritt</translation>
  </message>
  <message>
   <source>all of {project}</source>
   <translation>alle von {project}</translation>
  </message>
 </context>
 <context>
  <name>StepForm</name>
  <message>
   <source>Its name in the logbook and in gates</source>
   <translation>Sein Name im Logbuch und in Bedingungen</translation>
  </message>
  <message>
   <source>What</source>
   <translation>Was</translation>
  </message>
  <message>
   <source>Short name</source>
   <translation>Kurzname</translation>
  </message>
  <message>
   <source>Stage</source>
   <translation>Arbeitsschritt</translation>
  </message>
  <message>
   <source>With</source>
   <translation>Womit</translation>
  </message>
  <message>
   <source>The varnish is</source>
   <translation>Der Klarlack ist</translation>
  </message>
  <message>
   <source>Colours and places</source>
   <translation>Farben und Stellen</translation>
  </message>
  <message>
   <source>Minutes at the bench, for each coat</source>
   <translation>Minuten am Tisch, je Schicht</translation>
  </message>
  <message>
   <source>Fixed</source>
   <translation>Fest</translation>
  </message>
  <message>
   <source>For each part</source>
   <translation>Je Teil</translation>
  </message>
  <message>
   <source>For each change of colour</source>
   <translation>Je Farbwechsel</translation>
  </message>
  <message>
   <source>in one go</source>
   <translation>in einem Zug</translation>
  </message>
  <message>
   <source>Work that can be interrupted: the shortest piece worth starting</source>
   <translation>Arbeit, die sich unterbrechen lässt: das kürzeste Stück, das sich lohnt</translation>
  </message>
  <message>
   <source>Can be interrupted after</source>
   <translation>Unterbrechbar nach</translation>
  </message>
  <message>
   <source>Marks</source>
   <translation>Merkmale</translation>
  </message>
  <message>
   <source>Must be finished in one session</source>
   <translation>Muss in einer Sitzung fertig werden</translation>
  </message>
  <message>
   <source>Needs daylight</source>
   <translation>Braucht Tageslicht</translation>
  </message>
  <message>
   <source>Smells: air the room</source>
   <translation>Riecht: Raum lüften</translation>
  </message>
  <message>
   <source>Noisy: not in quiet hours</source>
   <translation>Laut: nicht in Ruhezeiten</translation>
  </message>
  <message>
   <source>Hands free: it goes on alone</source>
   <translation>Hände frei: es geht von allein weiter</translation>
  </message>
  <message>
   <source>In any air, on my word</source>
   <translation>In jeder Luft, auf mein Wort</translation>
  </message>
  <message>
   <source>Hands are needed only for the first minutes; spraying needs them throughout</source>
   <translation>Die Hände sind nur für die ersten Minuten nötig; beim Sprühen durchgehend</translation>
  </message>
  <message>
   <source>Planned even where the air is too cold or too damp for its coating</source>
   <translation>Wird auch geplant, wo die Luft für den Lack zu kalt oder zu feucht ist</translation>
  </message>
  <message>
   <source>Ends an hour before quiet hours begin</source>
   <translation>Endet eine Stunde, bevor die Ruhezeit beginnt</translation>
  </message>
  <message>
   <source>Needs two people</source>
   <translation>Braucht zwei Personen</translation>
  </message>
  <message>
   <source>none</source>
   <translation>nie</translation>
  </message>
  <message>
   <source>Hands are free until then</source>
   <translation>Hände sind frei bis dahin</translation>
  </message>
  <message>
   <source>Have a look after</source>
   <translation>Nachsehen nach</translation>
  </message>
  <message>
   <source>Dries in</source>
   <translation>Trocknet in</translation>
  </message>
  <message>
   <source>Or in</source>
   <translation>Oder in</translation>
  </message>
  <message>
   <source>The faces are scraped to bare plastic</source>
   <translation>Die Flächen werden bis auf den blanken Kunststoff geschabt</translation>
  </message>
  <message>
   <source>as its parts</source>
   <translation>wie seine Teile</translation>
  </message>
  <message>
   <source>Drying places once joined</source>
   <translation>Trockenplätze nach dem Verbinden</translation>
  </message>
  <message>
   <source>Waits for</source>
   <translation>Wartet auf</translation>
  </message>
  <message>
   <source>Other steps that must be done first</source>
   <translation>Weitere Schritte, die zuerst getan sein müssen</translation>
  </message>
  <message>
   <source>{place} (usual)</source>
   <translation>{place} (üblich)</translation>
  </message>
 </context>
 <context>
  <name>StockModel</name>
  <message>
   <source>Coating</source>
   <translation>Mittel</translation>
  </message>
  <message>
   <source>Finish</source>
   <translation>Glanzgrad</translation>
  </message>
  <message>
   <source>For</source>
   <translation>Für</translation>
  </message>
  <message>
   <source>Left</source>
   <translation>Übrig</translation>
  </message>
  <message>
   <source>Plan needs</source>
   <translation>Plan braucht</translation>
  </message>
  <message>
   <source>To buy</source>
   <translation>Zu kaufen</translation>
  </message>
  <message>
   <source>Bottle</source>
   <translation>Flasche</translation>
  </message>
  <message>
   <source>Opened</source>
   <translation>Geöffnet</translation>
  </message>
  <message>
   <source>{family} ({n})</source>
   <translation>{family} ({n})</translation>
  </message>
 </context>
 <context>
  <name>StockView</name>
  <message>
   <source>Coatings</source>
   <translation>Mittel</translation>
  </message>
  <message>
   <source>Mixes</source>
   <translation>Mischungen</translation>
  </message>
  <message>
   <source>Consumables</source>
   <translation>Verbrauchsmaterial</translation>
  </message>
  <message>
   <source>Leftovers</source>
   <translation>Reste</translation>
  </message>
  <message>
   <source>Sample cards</source>
   <translation>Musterkarten</translation>
  </message>
  <message>
   <source>Stock</source>
   <translation>Vorrat</translation>
  </message>
  <message>
   <source>No mix yet. A mix is parts of several coatings, or a coating with its thinner.</source>
   <translation>Noch keine Mischung. Eine Mischung besteht aus Teilen mehrerer Mittel oder aus einem Mittel mit seiner Verdünnung.</translation>
  </message>
  <message>
   <source>Mix</source>
   <translation>Mischung</translation>
  </message>
  <message>
   <source>Parts</source>
   <translation>Teile</translation>
  </message>
  <message>
   <source>Of</source>
   <translation>Wovon</translation>
  </message>
  <message>
   <source>Can be used for</source>
   <translation>Verwendbar</translation>
  </message>
  <message>
   <source>Add mix…</source>
   <translation>Mischung hinzufügen …</translation>
  </message>
  <message>
   <source>Keep a leftover…</source>
   <translation>Rest aufheben …</translation>
  </message>
  <message>
   <source>Nothing yet: tape, decal fluid, foam, swabs and the like.</source>
   <translation>Noch nichts: Band, Weichmacher für Abziehbilder, Schaumstoff, Tupfer und dergleichen.</translation>
  </message>
  <message>
   <source>Consumable</source>
   <translation>Verbrauchsmaterial</translation>
  </message>
  <message>
   <source>Left</source>
   <translation>Übrig</translation>
  </message>
  <message>
   <source>A coat takes</source>
   <translation>Je Schicht</translation>
  </message>
  <message>
   <source>At</source>
   <translation>Bei</translation>
  </message>
  <message>
   <source>Add consumable…</source>
   <translation>Verbrauchsmaterial hinzufügen …</translation>
  </message>
  <message>
   <source>Change…</source>
   <translation>Ändern …</translation>
  </message>
  <message>
   <source>Count…</source>
   <translation>Zählen …</translation>
  </message>
  <message>
   <source>Bought…</source>
   <translation>Gekauft …</translation>
  </message>
  <message>
   <source>Remove</source>
   <translation>Entfernen</translation>
  </message>
  <message>
   <source>Leftover mixes</source>
   <translation>Mischungsreste</translation>
  </message>
  <message>
   <source>No leftover mix is kept for touch-ups.</source>
   <translation>Kein Mischungsrest ist zum Ausbessern aufgehoben.</translation>
  </message>
  <message>
   <source>Jar</source>
   <translation>Glas</translation>
  </message>
  <message>
   <source>How much</source>
   <translation>Wie viel</translation>
  </message>
  <message>
   <source>Mixed</source>
   <translation>Gemischt</translation>
  </message>
  <message>
   <source>Keeps</source>
   <translation>Hält</translation>
  </message>
  <message>
   <source>Add leftover…</source>
   <translation>Rest hinzufügen …</translation>
  </message>
  <message>
   <source>No sample card yet: a painted card, with what was mixed drop by drop.</source>
   <translation>Noch keine Musterkarte: eine bemalte Karte, mit dem, was Tropfen für Tropfen gemischt wurde.</translation>
  </message>
  <message>
   <source>Card</source>
   <translation>Karte</translation>
  </message>
  <message>
   <source>Painted</source>
   <translation>Bemalt</translation>
  </message>
  <message>
   <source>Drops</source>
   <translation>Tropfen</translation>
  </message>
  <message>
   <source>Photo</source>
   <translation>Foto</translation>
  </message>
  <message>
   <source>yes</source>
   <translation>ja</translation>
  </message>
  <message>
   <source>Note</source>
   <translation>Notiz</translation>
  </message>
  <message>
   <source>Add sample card…</source>
   <translation>Musterkarte hinzufügen …</translation>
  </message>
  <message>
   <source>1 coating</source>
   <translation>1 Mittel</translation>
  </message>
  <message>
   <source>{n} coatings</source>
   <translation>{n} Mittel</translation>
  </message>
  <message>
   <source>{coatings}; {short} short for what is planned</source>
   <translation>{coatings}; {short} zu wenig für das Geplante</translation>
  </message>
  <message>
   <source>1 is</source>
   <translation>davon 1</translation>
  </message>
  <message>
   <source>{n} are</source>
   <translation>davon {n}</translation>
  </message>
  <message>
   <source>{coatings}</source>
   <translation>{coatings}</translation>
  </message>
  <message>
   <source>△ expired {day}</source>
   <translation>△ abgelaufen {day}</translation>
  </message>
  <message>
   <source>until {day}</source>
   <translation>bis {day}</translation>
  </message>
  <message>
   <source>By the book, {amount} of {name} is left.</source>
   <translation>Laut Buch sind von {name} noch {amount} übrig.</translation>
  </message>
  <message>
   <source>Count a consumable</source>
   <translation>Verbrauchsmaterial zählen</translation>
  </message>
  <message>
   <source>&amp;There are</source>
   <translation>&amp;Es sind</translation>
  </message>
  <message>
   <source>Bought</source>
   <translation>Gekauft</translation>
  </message>
  <message>
   <source>&amp;So much</source>
   <translation>&amp;So viel</translation>
  </message>
 </context>
 <context>
  <name>StripCanvas</name>
  <message>
   <source>Timeline</source>
   <translation>Zeitstrahl</translation>
  </message>
  <message>
   <source>A drawing of the plan. The list below it says the same in words.</source>
   <translation>Eine Zeichnung des Plans. Die Liste darunter sagt dasselbe in Worten.</translation>
  </message>
 </context>
 <context>
  <name>SwatchField</name>
  <message>
   <source>Choose…</source>
   <translation>Wählen …</translation>
  </message>
 </context>
 <context>
  <name>TimelinePage</name>
  <message>
   <source>Plan</source>
   <translation>Plan</translation>
  </message>
  <message>
   <source>Smaller (−)</source>
   <translation>Kleiner (−)</translation>
  </message>
  <message>
   <source>Larger (+)</source>
   <translation>Größer (+)</translation>
  </message>
  <message>
   <source>Fit the whole plan (0)</source>
   <translation>Ganzen Plan einpassen (0)</translation>
  </message>
  <message>
   <source>now</source>
   <translation>jetzt</translation>
  </message>
  <message>
   <source>Go to now</source>
   <translation>Zu jetzt gehen</translation>
  </message>
  <message>
   <source>PDF…</source>
   <translation>PDF …</translation>
  </message>
  <message>
   <source>Save the strip as pages to print</source>
   <translation>Den Zeitstrahl als Seiten zum Drucken sichern</translation>
  </message>
  <message>
   <source>Overview</source>
   <translation>Übersicht</translation>
  </message>
  <message>
   <source>The whole plan, one lane a model</source>
   <translation>Der ganze Plan, eine Bahn je Modell</translation>
  </message>
  <message>
   <source>Work</source>
   <translation>Arbeit</translation>
  </message>
  <message>
   <source>Every part and every name, with the list below</source>
   <translation>Jedes Teil und jeder Name, mit der Liste darunter</translation>
  </message>
  <message>
   <source>Wish</source>
   <translation>Wunsch</translation>
  </message>
  <message>
   <source>What can be wished of the chosen piece of work</source>
   <translation>Was sich für die gewählte Arbeit wünschen lässt</translation>
  </message>
  <message>
   <source>Done {day}</source>
   <translation>Fertig {day}</translation>
  </message>
 </context>
 <context>
  <name>TimelineView</name>
  <message>
   <source>{project}: due by the end of {day}</source>
   <translation>{project}: fertig bis zum Ende von {day}</translation>
  </message>
 </context>
 <context>
  <name>TimesEditor</name>
  <message>
   <source> min</source>
   <translation> min</translation>
  </message>
  <message>
   <source>Minutes to {state}</source>
   <translation>Minuten bis {state}</translation>
  </message>
  <message>
   <source>Where the time stands</source>
   <translation>Wo die Zeit steht</translation>
  </message>
 </context>
 <context>
  <name>TimesModel</name>
  <message>
   <source>Coating</source>
   <translation>Mittel</translation>
  </message>
  <message>
   <source>never</source>
   <translation>nie</translation>
  </message>
  <message>
   <source>not now</source>
   <translation>nicht jetzt</translation>
  </message>
  <message>
   <source>with care</source>
   <translation>mit Bedacht</translation>
  </message>
  <message>
   <source>⚠ {name} ({sign})</source>
   <translation>⚠ {name} ({sign})</translation>
  </message>
  <message>
   <source>{coating} is never {state} in this air</source>
   <translation>{coating} wird in dieser Luft nie {state}</translation>
  </message>
  <message>
   <source>{coating}: {state} between {early} and {late}
from {minutes:.0f} min at 23 °C and 50 % RH ({status}: {source})</source>
   <translation>{coating}: {state} zwischen {early} und {late}
ab {minutes:.0f} min bei 23 °C und 50 % r. F. ({status}: {source})</translation>
  </message>
 </context>
 <context>
  <name>TonightView</name>
  <message>
   <source>Run sheet</source>
   <translation>Ablauf des Abends</translation>
  </message>
  <message>
   <source>Drying and closing</source>
   <translation>Trocknen und Schließen</translation>
  </message>
  <message>
   <source>From before this session</source>
   <translation>Von vor dieser Bastelzeit</translation>
  </message>
  <message>
   <source>Time to put away: {checks}</source>
   <translation>Zeit zum Aufräumen: {checks}</translation>
  </message>
  <message>
   <source>The label, the safety data sheet and local rules have the last word.</source>
   <translation>Das letzte Wort haben das Etikett, das Sicherheitsdatenblatt und die örtlichen Vorschriften.</translation>
  </message>
 </context>
 <context>
  <name>Unforeseen</name>
  <message>
   <source>Unexpected error</source>
   <translation>Unerwarteter Fehler</translation>
  </message>
  <message>
   <source>Something went wrong.</source>
   <translation>Etwas ist schiefgegangen.</translation>
  </message>
  <message>
   <source>Your book is saved up to the last edit. You can go on.</source>
   <translation>Das Buch ist bis zur letzten Änderung gespeichert. Es kann weitergehen.</translation>
  </message>
  <message>
   <source>A report is in {path}. It names no model, person or file; read it before you share it.</source>
   <translation>Ein Bericht liegt in {path}. Er nennt weder Modell noch Person noch Datei; vor dem Weitergeben lesen.</translation>
  </message>
  <message>
   <source>&amp;Show the report</source>
   <translation>Bericht &amp;zeigen</translation>
  </message>
 </context>
 <context>
  <name>UnsavedBar</name>
  <message>
   <source>Not saved</source>
   <translation>Nicht gespeichert</translation>
  </message>
  <message>
   <source>&amp;Try again</source>
   <translation>&amp;Erneut versuchen</translation>
  </message>
  <message>
   <source>&amp;Save elsewhere…</source>
   <translation>&amp;Anderswo speichern …</translation>
  </message>
  <message>
   <source>&amp;Go on with it there</source>
   <translation>&amp;Dort weitermachen</translation>
  </message>
  <message>
   <source>{book} {why}.</source>
   <translation>{book} {why}.</translation>
  </message>
  <message>
   <source>{book} {why}. One edit is not saved; it is kept here.</source>
   <translation>{book} {why}. Eine Änderung ist nicht gespeichert; sie bleibt hier erhalten.</translation>
  </message>
  <message>
   <source>{book} {why}. {n} edits are not saved; they are kept here.</source>
   <translation>{book} {why}. {n} Änderungen sind nicht gespeichert; sie bleiben hier erhalten.</translation>
  </message>
  <message>
   <source>Some edits are not saved: the book cannot be written.</source>
   <translation>Manche Änderungen sind nicht gespeichert: Das Buch lässt sich nicht schreiben.</translation>
  </message>
  <message>
   <source>Closed now, they are kept in a file of their own, which can be imported.</source>
   <translation>Beim Schließen kommen sie in eine eigene Datei, die sich importieren lässt.</translation>
  </message>
  <message>
   <source>&amp;Close and keep them</source>
   <translation>&amp;Schließen und aufheben</translation>
  </message>
  <message>
   <source>Save the bench book elsewhere</source>
   <translation>Werkbuch anderswo speichern</translation>
  </message>
  <message>
   <source>Bench books ({pattern})</source>
   <translation>Werkbücher ({pattern})</translation>
  </message>
 </context>
 <context>
  <name>UsualDayCurve</name>
  <message>
   <source>The usual day</source>
   <translation>Der übliche Tag</translation>
  </message>
  <message>
   <source>°C</source>
   <translation>°C</translation>
  </message>
  <message>
   <source>%</source>
   <translation>%</translation>
  </message>
 </context>
 <context>
  <name>VehicleLine</name>
  <message>
   <source>a vehicle, then Enter</source>
   <translation>ein Fahrzeug, dann Enter</translation>
  </message>
  <message>
   <source>Vehicle {n}: name</source>
   <translation>Fahrzeug {n}: Name</translation>
  </message>
  <message>
   <source>scale</source>
   <translation>Maßstab</translation>
  </message>
  <message>
   <source>Vehicle {n}: scale</source>
   <translation>Fahrzeug {n}: Maßstab</translation>
  </message>
  <message>
   <source>Vehicle {n}: sequence</source>
   <translation>Fahrzeug {n}: Ablauf</translation>
  </message>
  <message>
   <source>Options of vehicle {n}</source>
   <translation>Optionen von Fahrzeug {n}</translation>
  </message>
 </context>
 <context>
  <name>VehicleState</name>
  <message>
   <source>Vehicle {n}: kind</source>
   <translation>Fahrzeug {n}: Art</translation>
  </message>
  <message>
   <source>Brings parts and sizes, assumed until you type or measure them</source>
   <translation>Bringt Teile und Größen mit, angenommen, bis sie eingegeben oder gemessen sind</translation>
  </message>
  <message>
   <source>Vehicle {n}: how far it is</source>
   <translation>Fahrzeug {n}: wie weit es ist</translation>
  </message>
  <message>
   <source>on which day</source>
   <translation>an welchem Tag</translation>
  </message>
  <message>
   <source>Vehicle {n}: day on which the last of it was done; none is a week ago</source>
   <translation>Fahrzeug {n}: Tag, an dem das Letzte davon erledigt war; keiner heißt vor einer Woche</translation>
  </message>
  <message>
   <source>Kind</source>
   <translation>Art</translation>
  </message>
  <message>
   <source>So far</source>
   <translation>So weit</translation>
  </message>
  <message>
   <source>no such day</source>
   <translation>kein solcher Tag</translation>
  </message>
 </context>
 <context>
  <name>VehiclesDialog</name>
  <message>
   <source>Vehicles</source>
   <translation>Fahrzeuge</translation>
  </message>
  <message>
   <source>&amp;Project</source>
   <translation>&amp;Projekt</translation>
  </message>
  <message>
   <source>As &amp;this one</source>
   <translation>&amp;Wie dieses</translation>
  </message>
  <message>
   <source>Another with other markings: its parts, colours and changes, too</source>
   <translation>Noch eins mit anderen Markierungen: auch seine Teile, Farben und Änderungen</translation>
  </message>
  <message>
   <source>&amp;Vehicles</source>
   <translation>&amp;Fahrzeuge</translation>
  </message>
  <message>
   <source>&amp;Add</source>
   <translation>&amp;Hinzufügen</translation>
  </message>
  <message>
   <source>there is no active project; begin one first</source>
   <translation>es gibt kein aktives Projekt; erst eins beginnen</translation>
  </message>
  <message>
   <source>A name is enough: it is finished as the one chosen above.</source>
   <translation>Ein Name genügt: es wird behandelt wie das oben gewählte.</translation>
  </message>
 </context>
 <context>
  <name>WeeksDrawing</name>
  <message>
   <source>{hours} h</source>
   <translation>{hours} h</translation>
  </message>
 </context>
 <context>
  <name>WeightForm</name>
  <message>
   <source>Project</source>
   <translation>Projekt</translation>
  </message>
  <message>
   <source>Weight</source>
   <translation>Gewicht</translation>
  </message>
  <message>
   <source>Another weight of a project</source>
   <translation>Ein anderes Gewicht eines Projekts</translation>
  </message>
  <message>
   <source>{project}: weight {weight}</source>
   <translation>{project}: Gewicht {weight}</translation>
  </message>
 </context>
 <context>
  <name>WhatIfView</name>
  <message>
   <source>&amp;Keep it</source>
   <translation>Behalte&amp;n</translation>
  </message>
  <message>
   <source>&amp;Drop it</source>
   <translation>&amp;Verwerfen</translation>
  </message>
  <message>
   <source>What to try</source>
   <translation>Was ausprobiert wird</translation>
  </message>
  <message>
   <source>&amp;Try it</source>
   <translation>&amp;Ausprobieren</translation>
  </message>
  <message>
   <source>Try it to&amp;gether with the chosen one</source>
   <translation>Zusammen &amp;mit dem gewählten versuchen</translation>
  </message>
  <message>
   <source>The present plan, and what was tried</source>
   <translation>Der jetzige Plan, und was ausprobiert wurde</translation>
  </message>
  <message>
   <source>Drop it</source>
   <translation>Verwerfen</translation>
  </message>
  <message>
   <source>What if</source>
   <translation>Was wäre, wenn</translation>
  </message>
  <message>
   <source>Try changes beside the plan and compare them. Nothing changes until you keep one, and that can be undone.</source>
   <translation>Probieren Sie Änderungen neben dem Plan aus und vergleichen Sie. Nichts ändert sich, bevor Sie eine behalten, und das lässt sich rückgängig machen.</translation>
  </message>
  <message>
   <source>Try a change</source>
   <translation>Eine Änderung ausprobieren</translation>
  </message>
  <message>
   <source>&amp;What to try</source>
   <translation>Was ausp&amp;robieren</translation>
  </message>
  <message>
   <source> and </source>
   <translation> und </translation>
  </message>
 </context>
 <context>
  <name>WindowField</name>
  <message>
   <source>Opens</source>
   <translation>Öffnet</translation>
  </message>
  <message>
   <source>at once</source>
   <translation>sofort</translation>
  </message>
  <message>
   <source>Best</source>
   <translation>Am besten</translation>
  </message>
  <message>
   <source>as soon as it opens</source>
   <translation>sobald es öffnet</translation>
  </message>
  <message>
   <source>Closes</source>
   <translation>Schließt</translation>
  </message>
  <message>
   <source>never</source>
   <translation>nie</translation>
  </message>
  <message>
   <source>Preparation</source>
   <translation>Vorbereitung</translation>
  </message>
  <message>
   <source>Minutes of preparation</source>
   <translation>Minuten Vorbereitung</translation>
  </message>
  <message>
   <source>melts into the film below</source>
   <translation>verschmilzt mit dem Film darunter</translation>
  </message>
  <message>
   <source>opens</source>
   <translation>öffnet</translation>
  </message>
  <message>
   <source>best</source>
   <translation>am besten</translation>
  </message>
  <message>
   <source>closes</source>
   <translation>schließt</translation>
  </message>
  <message>
   <source>first</source>
   <translation>erst</translation>
  </message>
 </context>
 <context>
  <name>WindowRow</name>
  <message>
   <source>Remove this window</source>
   <translation>Dieses Fenster entfernen</translation>
  </message>
 </context>
 <context>
  <name>WindowsEditor</name>
  <message>
   <source>Add a window</source>
   <translation>Fenster hinzufügen</translation>
  </message>
  <message>
   <source>None: the next coat may follow once this one is dry-to-recoat.</source>
   <translation>Keines: Die nächste Schicht darf folgen, sobald diese überlackierbar ist.</translation>
  </message>
  <message>
   <source>Window {n}</source>
   <translation>Fenster {n}</translation>
  </message>
 </context>
 <context>
  <name>WishActions</name>
  <message>
   <source>Trying it…</source>
   <translation>Wird ausprobiert …</translation>
  </message>
  <message>
   <source>&amp;Pin it where it stands</source>
   <translation>&amp;Hier anheften</translation>
  </message>
  <message>
   <source>Pin it to a &amp;session…</source>
   <translation>An eine Sit&amp;zung anheften …</translation>
  </message>
  <message>
   <source>A session s&amp;ooner</source>
   <translation>Eine Sitzung &amp;früher</translation>
  </message>
  <message>
   <source>A session &amp;later</source>
   <translation>Eine Sitzung &amp;später</translation>
  </message>
  <message>
   <source>&amp;Not before…</source>
   <translation>&amp;Nicht vor …</translation>
  </message>
  <message>
   <source>&amp;Together with…</source>
   <translation>Zusammen &amp;mit …</translation>
  </message>
  <message>
   <source>Take its &amp;wishes back</source>
   <translation>&amp;Wünsche dazu zurücknehmen</translation>
  </message>
  <message>
   <source>This vehicle as &amp;early as it can be</source>
   <translation>&amp;Dieses Fahrzeug so früh wie möglich</translation>
  </message>
  <message>
   <source>Begin no other &amp;before this vehicle is finished</source>
   <translation>&amp;Kein anderes beginnen, bevor dieses Fahrzeug fertig ist</translation>
  </message>
  <message>
   <source>This piece of work has no place in the plan.</source>
   <translation>Diese Arbeit hat keinen Platz im Plan.</translation>
  </message>
  <message>
   <source>It was done outside bench time and moves no more.</source>
   <translation>Es wurde außerhalb der Bastelzeit getan und verschiebt sich nicht mehr.</translation>
  </message>
  <message>
   <source>There is no session before this one.</source>
   <translation>Vor dieser gibt es keine Sitzung.</translation>
  </message>
  <message>
   <source>Pin it to a session</source>
   <translation>An eine Sitzung anheften</translation>
  </message>
  <message>
   <source>In which session?</source>
   <translation>In welcher Sitzung?</translation>
  </message>
  <message>
   <source>Not before</source>
   <translation>Nicht vor</translation>
  </message>
  <message>
   <source>Not before which session?</source>
   <translation>Nicht vor welcher Sitzung?</translation>
  </message>
  <message>
   <source>Together with</source>
   <translation>Zusammen mit</translation>
  </message>
  <message>
   <source>In one session with which piece of work?</source>
   <translation>In einer Sitzung mit welcher Arbeit?</translation>
  </message>
 </context>
 <context>
  <name>WishModel</name>
  <message>
   <source>Piece of work</source>
   <translation>Arbeit</translation>
  </message>
  <message>
   <source>Wish</source>
   <translation>Wunsch</translation>
  </message>
  <message>
   <source>In the plan</source>
   <translation>Im Plan</translation>
  </message>
 </context>
 <context>
  <name>WishesView</name>
  <message>
   <source>&amp;Take it back</source>
   <translation>&amp;Zurücknehmen</translation>
  </message>
  <message>
   <source>&amp;Show it on the timeline</source>
   <translation>Auf dem Zeit&amp;strahl zeigen</translation>
  </message>
  <message>
   <source>No wishes yet. In the plan, choose a piece of work and press P to pin it, N for “not before”, T for “together with”.</source>
   <translation>Noch keine Wünsche. Wählen Sie im Plan eine Arbeit; P heftet sie an, N heißt „nicht vor“, T „zusammen mit“.</translation>
  </message>
  <message>
   <source>Counts &amp;more</source>
   <translation>Zählt &amp;mehr</translation>
  </message>
  <message>
   <source>Counts &amp;less</source>
   <translation>Zählt we&amp;niger</translation>
  </message>
  <message>
   <source>&amp;Usual order</source>
   <translation>&amp;Übliche Reihenfolge</translation>
  </message>
  <message>
   <source>&amp;Keep close to the plan on screen</source>
   <translation>Nahe am gezeigten &amp;Plan bleiben</translation>
  </message>
  <message>
   <source>E&amp;arliest finish, whatever moves</source>
   <translation>F&amp;rühestes Ende, was immer sich verschiebt</translation>
  </message>
  <message>
   <source>Wishes</source>
   <translation>Wünsche</translation>
  </message>
  <message>
   <source>Take it back</source>
   <translation>Zurücknehmen</translation>
  </message>
  <message>
   <source>One vehicle first</source>
   <translation>Ein Fahrzeug zuerst</translation>
  </message>
  <message>
   <source>As early as it can be: the others fill the gaps while its paint dries. Waited for: no other of its project begins before it is finished.</source>
   <translation>So früh wie möglich: Die anderen füllen die Lücken, während seine Farbe trocknet. Abgewartet: Kein anderes seines Projekts beginnt, bevor es fertig ist.</translation>
  </message>
  <message>
   <source>What counts most</source>
   <translation>Was am meisten zählt</translation>
  </message>
  <message>
   <source>Plans are compared in this order, top first. That everything has a place comes before all of it.</source>
   <translation>Pläne werden in dieser Reihenfolge verglichen, das Oberste zuerst. Dass alles einen Platz hat, geht allem vor.</translation>
  </message>
  <message>
   <source>What counts, the most important first</source>
   <translation>Was zählt, das Wichtigste zuerst</translation>
  </message>
  <message>
   <source>How sure a wait must be</source>
   <translation>Wie sicher eine Wartezeit sein muss</translation>
  </message>
  <message>
   <source>What is ticked follows once the coat below is likely ready, because it can be redone. All else waits until it surely is.</source>
   <translation>Angekreuztes folgt, sobald die Schicht darunter wahrscheinlich so weit ist, denn es lässt sich wiederholen. Alles andere wartet, bis sie es sicher ist.</translation>
  </message>
  <message>
   <source>What a new plan may move</source>
   <translation>Was ein neuer Plan verschieben darf</translation>
  </message>
  <message>
   <source>Close: work moves to another evening only if that places more, is less late or ends a project an evening sooner. Tonight moves only if you accept it. Evenings that you printed or put into a calendar stay.</source>
   <translation>Nahe: Arbeit rückt nur auf einen anderen Abend, wenn dadurch mehr Platz findet, weniger verspätet ist oder ein Projekt einen Abend früher endet. Heute Abend rückt nur, was Sie annehmen. Gedruckte oder in einen Kalender geschriebene Abende bleiben.</translation>
  </message>
  <message>
   <source>First of {project}</source>
   <translation>Zuerst von {project}</translation>
  </message>
  <message>
   <source>All together</source>
   <translation>Alle zusammen</translation>
  </message>
  <message>
   <source>{model}, as early as it can be</source>
   <translation>{model}, so früh wie möglich</translation>
  </message>
  <message>
   <source>{model}, waited for</source>
   <translation>{model}, abgewartet</translation>
  </message>
  <message>
   <source>{number}. {what}</source>
   <translation>{number}. {what}</translation>
  </message>
 </context>
 <context>
  <name>care</name>
  <message>
   <source>another coat</source>
   <translation>eine weitere Schicht</translation>
  </message>
  <message>
   <source>a wash</source>
   <translation>eine Lasur</translation>
  </message>
  <message>
   <source>decals</source>
   <translation>Abziehbilder</translation>
  </message>
  <message>
   <source>a clear coat</source>
   <translation>ein Klarlack</translation>
  </message>
  <message>
   <source>tape</source>
   <translation>Klebeband</translation>
  </message>
  <message>
   <source>the last coat</source>
   <translation>die letzte Schicht</translation>
  </message>
  <message>
   <source>a hard or strong coat</source>
   <translation>eine harte oder scharfe Schicht</translation>
  </message>
 </context>
 <context>
  <name>change</name>
  <message>
   <source>one colour more</source>
   <translation>eine Farbe mehr</translation>
  </message>
  <message>
   <source>chipping layers</source>
   <translation>Lackabplatzer</translation>
  </message>
  <message>
   <source>no chipping</source>
   <translation>keine Abplatzer</translation>
  </message>
  <message>
   <source>decals</source>
   <translation>Abziehbilder</translation>
  </message>
  <message>
   <source>no decals</source>
   <translation>keine Abziehbilder</translation>
  </message>
  <message>
   <source>no wash</source>
   <translation>kein Washing</translation>
  </message>
  <message>
   <source>brush instead of airbrush</source>
   <translation>Pinsel statt Airbrush</translation>
  </message>
  <message>
   <source>spray can where it can be</source>
   <translation>Sprühdose, wo es geht</translation>
  </message>
  <message>
   <source>airbrush instead of brush</source>
   <translation>Airbrush statt Pinsel</translation>
  </message>
  <message>
   <source>wheels and tools apart</source>
   <translation>Räder und Werkzeug getrennt</translation>
  </message>
  <message>
   <source>everything glued first</source>
   <translation>alles zuerst geklebt</translation>
  </message>
 </context>
 <context>
  <name>colour</name>
  <message>
   <source>primer</source>
   <translation>Grundierung</translation>
  </message>
  <message>
   <source>primer (spray can)</source>
   <translation>Grundierung (Sprühdose)</translation>
  </message>
  <message>
   <source>base colour</source>
   <translation>Grundfarbe</translation>
  </message>
  <message>
   <source>base colour (spray can)</source>
   <translation>Grundfarbe (Sprühdose)</translation>
  </message>
  <message>
   <source>running gear</source>
   <translation>Laufwerk</translation>
  </message>
  <message>
   <source>shading wash</source>
   <translation>schattierendes Washing</translation>
  </message>
  <message>
   <source>edges</source>
   <translation>Kanten</translation>
  </message>
  <message>
   <source>gloss clear</source>
   <translation>glänzender Klarlack</translation>
  </message>
  <message>
   <source>decals</source>
   <translation>Abziehbilder</translation>
  </message>
  <message>
   <source>glue</source>
   <translation>Kleber</translation>
  </message>
  <message>
   <source>matte clear</source>
   <translation>matter Klarlack</translation>
  </message>
  <message>
   <source>matte clear (spray can)</source>
   <translation>matter Klarlack (Sprühdose)</translation>
  </message>
  <message>
   <source>undercoat</source>
   <translation>Unterschicht</translation>
  </message>
  <message>
   <source>shows where the base is chipped</source>
   <translation>zeigt sich, wo die Grundfarbe abgeplatzt ist</translation>
  </message>
  <message>
   <source>chipping fluid</source>
   <translation>Chipping-Flüssigkeit</translation>
  </message>
  <message>
   <source>second colour</source>
   <translation>zweite Farbe</translation>
  </message>
  <message>
   <source>third colour</source>
   <translation>dritte Farbe</translation>
  </message>
  <message>
   <source>tools</source>
   <translation>Werkzeug am Fahrzeug</translation>
  </message>
  <message>
   <source>chips</source>
   <translation>Abplatzer</translation>
  </message>
  <message>
   <source>gloss clear (spray can)</source>
   <translation>glänzender Klarlack (Sprühdose)</translation>
  </message>
  <message>
   <source>filter</source>
   <translation>Filter</translation>
  </message>
  <message>
   <source>oil wash</source>
   <translation>Ölwashing</translation>
  </message>
  <message>
   <source>graphite</source>
   <translation>Graphit</translation>
  </message>
  <message>
   <source>pigments</source>
   <translation>Pigmente</translation>
  </message>
  <message>
   <source>pigment fixer</source>
   <translation>Pigmentfixierer</translation>
  </message>
  <message>
   <source>body colour</source>
   <translation>Karosseriefarbe</translation>
  </message>
  <message>
   <source>body colour (spray can)</source>
   <translation>Karosseriefarbe (Sprühdose)</translation>
  </message>
  <message>
   <source>tyres</source>
   <translation>Reifen</translation>
  </message>
  <message>
   <source>trim</source>
   <translation>Zierteile</translation>
  </message>
  <message>
   <source>panel wash</source>
   <translation>Washing für Blechstöße</translation>
  </message>
  <message>
   <source>diluted further, along panel lines alone</source>
   <translation>weiter verdünnt, nur entlang der Blechstöße</translation>
  </message>
  <message>
   <source>satin clear</source>
   <translation>seidenmatter Klarlack</translation>
  </message>
  <message>
   <source>whitewash</source>
   <translation>Winterweiß</translation>
  </message>
  <message>
   <source>slush and dry earth</source>
   <translation>Matsch und trockene Erde</translation>
  </message>
  <message>
   <source>light from above</source>
   <translation>Licht von oben</translation>
  </message>
  <message>
   <source>skin</source>
   <translation>Haut</translation>
  </message>
  <message>
   <source>cloth</source>
   <translation>Stoff</translation>
  </message>
  <message>
   <source>gear</source>
   <translation>Ausrüstung</translation>
  </message>
  <message>
   <source>metal</source>
   <translation>Metall</translation>
  </message>
  <message>
   <source>lights</source>
   <translation>Lampen</translation>
  </message>
  <message>
   <source>ground</source>
   <translation>Boden</translation>
  </message>
  <message>
   <source>main tone</source>
   <translation>Hauptton</translation>
  </message>
  <message>
   <source>main tone (spray can)</source>
   <translation>Hauptton (Sprühdose)</translation>
  </message>
  <message>
   <source>patches</source>
   <translation>Flecken</translation>
  </message>
  <message>
   <source>first light</source>
   <translation>erstes Licht</translation>
  </message>
  <message>
   <source>last light</source>
   <translation>letztes Licht</translation>
  </message>
  <message>
   <source>moss</source>
   <translation>Moos</translation>
  </message>
 </context>
 <context>
  <name>effect</name>
  <message>
   <source>plain</source>
   <translation>schlicht</translation>
  </message>
  <message>
   <source>metallic</source>
   <translation>metallisch</translation>
  </message>
  <message>
   <source>mirror</source>
   <translation>spiegelnd</translation>
  </message>
  <message>
   <source>fluorescent</source>
   <translation>leuchtend</translation>
  </message>
  <message>
   <source>polish gloss</source>
   <translation>Polierglanz</translation>
  </message>
 </context>
 <context>
  <name>family</name>
  <message>
   <source>waterborne acrylic</source>
   <translation>wasserverdünnbares Acryl</translation>
  </message>
  <message>
   <source>solvent lacquer</source>
   <translation>Lösemittellack</translation>
  </message>
  <message>
   <source>alkyd enamel</source>
   <translation>Kunstharzlack (Enamel)</translation>
  </message>
  <message>
   <source>artist's oil</source>
   <translation>Künstlerölfarbe</translation>
  </message>
  <message>
   <source>alcohol ink</source>
   <translation>Alkoholtinte</translation>
  </message>
  <message>
   <source>two-pack</source>
   <translation>Zweikomponentenlack</translation>
  </message>
  <message>
   <source>pigment</source>
   <translation>Pigmente</translation>
  </message>
  <message>
   <source>pigment fixer</source>
   <translation>Pigmentfixierer</translation>
  </message>
  <message>
   <source>decal</source>
   <translation>Abziehbilder</translation>
  </message>
  <message>
   <source>chipping fluid</source>
   <translation>Chipping-Flüssigkeit</translation>
  </message>
  <message>
   <source>solvent cement</source>
   <translation>Plastikkleber</translation>
  </message>
  <message>
   <source>cyanoacrylate</source>
   <translation>Sekundenkleber</translation>
  </message>
  <message>
   <source>white glue</source>
   <translation>Weißleim</translation>
  </message>
  <message>
   <source>masking fluid</source>
   <translation>Maskierflüssigkeit</translation>
  </message>
  <message>
   <source>salt</source>
   <translation>Salz</translation>
  </message>
  <message>
   <source>retarder</source>
   <translation>Verzögerer</translation>
  </message>
  <message>
   <source>graphite</source>
   <translation>Graphit</translation>
  </message>
  <message>
   <source>water thinner</source>
   <translation>Verdünnung auf Wasserbasis</translation>
  </message>
  <message>
   <source>alcohol thinner</source>
   <translation>Alkoholverdünnung</translation>
  </message>
  <message>
   <source>white spirit</source>
   <translation>Testbenzin</translation>
  </message>
  <message>
   <source>lacquer thinner</source>
   <translation>Lackverdünnung</translation>
  </message>
 </context>
 <context>
  <name>finish</name>
  <message>
   <source>gloss</source>
   <translation>glänzend</translation>
  </message>
  <message>
   <source>satin</source>
   <translation>seidenmatt</translation>
  </message>
  <message>
   <source>matte</source>
   <translation>matt</translation>
  </message>
 </context>
 <context>
  <name>forbidding</name>
  <message>
   <source>{work} is already logged and does not move.</source>
   <translation>{work} ist schon im Logbuch und verschiebt sich nicht.</translation>
  </message>
  <message>
   <source>{stretch} is past.</source>
   <translation>{stretch} ist vorbei.</translation>
  </message>
  <message>
   <source>{work} cannot be ready before {at}.</source>
   <translation>{work} kann nicht vor {at} bereit sein.</translation>
  </message>
  <message>
   <source>No plan keeps this wish: {work} {why}.</source>
   <translation>Kein Plan erfüllt diesen Wunsch: {work} {why}.</translation>
  </message>
  <message>
   <source>{day} {start}–{end}</source>
   <translation>{day} {start}–{end}</translation>
  </message>
  <message>
   <source>No plan keeps this wish: then {work} {why}.</source>
   <translation>Kein Plan erfüllt diesen Wunsch: Dann {work} {why}.</translation>
  </message>
  <message>
   <source>has no place ({why})</source>
   <translation>hat keinen Platz ({why})</translation>
  </message>
  <message>
   <source>{work} cannot be done on {stretch}. {gate}: {why} ({source}).</source>
   <translation>{work} geht am {stretch} nicht. {gate}: {why} ({source}).</translation>
  </message>
 </context>
 <context>
  <name>given name</name>
  <message>
   <source>shading wash, 2 : 3</source>
   <translation>schattierendes Washing, 2 : 3</translation>
  </message>
  <message>
   <source>umber oil wash, 1 : 9</source>
   <translation>Ölwashing Umbra, 1 : 9</translation>
  </message>
  <message>
   <source>ochre filter, 1 : 19</source>
   <translation>Filter Ocker, 1 : 19</translation>
  </message>
  <message>
   <source>sand for the airbrush, 2 : 1</source>
   <translation>Sand für die Airbrush, 2 : 1</translation>
  </message>
  <message>
   <source>olive green for the airbrush, 2 : 1</source>
   <translation>Olivgrün für die Airbrush, 2 : 1</translation>
  </message>
  <message>
   <source>red brown for the airbrush, 2 : 1</source>
   <translation>Rotbraun für die Airbrush, 2 : 1</translation>
  </message>
  <message>
   <source>brick red for the airbrush, 2 : 1</source>
   <translation>Ziegelrot für die Airbrush, 2 : 1</translation>
  </message>
  <message>
   <source>dark grey for the airbrush, 2 : 1</source>
   <translation>Dunkelgrau für die Airbrush, 2 : 1</translation>
  </message>
  <message>
   <source>stone grey for the airbrush, 2 : 1</source>
   <translation>Steingrau für die Airbrush, 2 : 1</translation>
  </message>
  <message>
   <source>gloss clear for the airbrush, 3 : 1</source>
   <translation>Glanzklarlack für die Airbrush, 3 : 1</translation>
  </message>
  <message>
   <source>matte clear for the airbrush, 3 : 1</source>
   <translation>Mattklarlack für die Airbrush, 3 : 1</translation>
  </message>
  <message>
   <source>waterborne acrylic, grey primer</source>
   <translation>wasserverdünnbares Acryl, Grundierung grau</translation>
  </message>
  <message>
   <source>waterborne acrylic, white primer</source>
   <translation>wasserverdünnbares Acryl, Grundierung weiß</translation>
  </message>
  <message>
   <source>solvent lacquer, grey primer in a can</source>
   <translation>Lösemittellack, Grundierung grau (Sprühdose)</translation>
  </message>
  <message>
   <source>waterborne acrylic, sand</source>
   <translation>wasserverdünnbares Acryl, Sand</translation>
  </message>
  <message>
   <source>waterborne acrylic, pale sand</source>
   <translation>wasserverdünnbares Acryl, heller Sand</translation>
  </message>
  <message>
   <source>waterborne acrylic, olive green</source>
   <translation>wasserverdünnbares Acryl, Olivgrün</translation>
  </message>
  <message>
   <source>waterborne acrylic, red brown</source>
   <translation>wasserverdünnbares Acryl, Rotbraun</translation>
  </message>
  <message>
   <source>waterborne acrylic, brick red</source>
   <translation>wasserverdünnbares Acryl, Ziegelrot</translation>
  </message>
  <message>
   <source>waterborne acrylic, dark grey</source>
   <translation>wasserverdünnbares Acryl, Dunkelgrau</translation>
  </message>
  <message>
   <source>waterborne acrylic, stone grey</source>
   <translation>wasserverdünnbares Acryl, Steingrau</translation>
  </message>
  <message>
   <source>waterborne acrylic, pale grey</source>
   <translation>wasserverdünnbares Acryl, Hellgrau</translation>
  </message>
  <message>
   <source>waterborne acrylic, earth brown</source>
   <translation>wasserverdünnbares Acryl, Erdbraun</translation>
  </message>
  <message>
   <source>waterborne acrylic, leather brown</source>
   <translation>wasserverdünnbares Acryl, Lederbraun</translation>
  </message>
  <message>
   <source>waterborne acrylic, skin tone</source>
   <translation>wasserverdünnbares Acryl, Hautton</translation>
  </message>
  <message>
   <source>waterborne acrylic, olive drab cloth</source>
   <translation>wasserverdünnbares Acryl, olivfarbenes Tuch</translation>
  </message>
  <message>
   <source>waterborne acrylic, bright metal</source>
   <translation>wasserverdünnbares Acryl, blankes Metall</translation>
  </message>
  <message>
   <source>waterborne acrylic, moss green</source>
   <translation>wasserverdünnbares Acryl, Moosgrün</translation>
  </message>
  <message>
   <source>waterborne acrylic, light rust</source>
   <translation>wasserverdünnbares Acryl, heller Rost</translation>
  </message>
  <message>
   <source>waterborne acrylic, dark rust</source>
   <translation>wasserverdünnbares Acryl, dunkler Rost</translation>
  </message>
  <message>
   <source>waterborne acrylic, chalk white</source>
   <translation>wasserverdünnbares Acryl, Kreideweiß</translation>
  </message>
  <message>
   <source>waterborne wash, umber</source>
   <translation>wasserverdünnbares Washing, Umbra</translation>
  </message>
  <message>
   <source>solvent lacquer, sand in a can</source>
   <translation>Lösemittellack, Sand (Sprühdose)</translation>
  </message>
  <message>
   <source>solvent lacquer, olive green in a can</source>
   <translation>Lösemittellack, Olivgrün (Sprühdose)</translation>
  </message>
  <message>
   <source>solvent lacquer, brick red in a can</source>
   <translation>Lösemittellack, Ziegelrot (Sprühdose)</translation>
  </message>
  <message>
   <source>solvent lacquer, stone grey in a can</source>
   <translation>Lösemittellack, Steingrau (Sprühdose)</translation>
  </message>
  <message>
   <source>waterborne acrylic, gloss clear</source>
   <translation>wasserverdünnbares Acryl, glänzender Klarlack</translation>
  </message>
  <message>
   <source>waterborne acrylic, gloss clear in a can</source>
   <translation>wasserverdünnbares Acryl, glänzender Klarlack (Sprühdose)</translation>
  </message>
  <message>
   <source>waterborne acrylic, satin clear</source>
   <translation>wasserverdünnbares Acryl, seidenmatter Klarlack</translation>
  </message>
  <message>
   <source>waterborne acrylic, matte clear</source>
   <translation>wasserverdünnbares Acryl, matter Klarlack</translation>
  </message>
  <message>
   <source>waterborne acrylic, matte clear in a can</source>
   <translation>wasserverdünnbares Acryl, matter Klarlack (Sprühdose)</translation>
  </message>
  <message>
   <source>artist's oil, umber</source>
   <translation>Künstlerölfarbe, Umbra</translation>
  </message>
  <message>
   <source>artist's oil, ochre</source>
   <translation>Künstlerölfarbe, Ocker</translation>
  </message>
  <message>
   <source>water-slide decals</source>
   <translation>Nassschiebebilder</translation>
  </message>
  <message>
   <source>chipping fluid</source>
   <translation>Chipping-Flüssigkeit</translation>
  </message>
  <message>
   <source>graphite powder</source>
   <translation>Graphitpulver</translation>
  </message>
  <message>
   <source>pigment, dry earth</source>
   <translation>Pigmente, trockene Erde</translation>
  </message>
  <message>
   <source>pigment fixer</source>
   <translation>Pigmentfixierer</translation>
  </message>
  <message>
   <source>cyanoacrylate glue</source>
   <translation>Sekundenkleber</translation>
  </message>
  <message>
   <source>water</source>
   <translation>Wasser</translation>
  </message>
  <message>
   <source>white spirit</source>
   <translation>Testbenzin</translation>
  </message>
  <message>
   <source>bench</source>
   <translation>Basteltisch</translation>
  </message>
  <message>
   <source>airbrush</source>
   <translation>Airbrush</translation>
  </message>
  <message>
   <source>warm box</source>
   <translation>Wärmebox</translation>
  </message>
  <message>
   <source>handle</source>
   <translation>Griff</translation>
  </message>
  <message>
   <source>body</source>
   <translation>Rumpf</translation>
  </message>
  <message>
   <source>all over</source>
   <translation>ringsum</translation>
  </message>
  <message>
   <source>below</source>
   <translation>unten</translation>
  </message>
  <message>
   <source>wheels</source>
   <translation>Räder</translation>
  </message>
  <message>
   <source>tools</source>
   <translation>Werkzeug</translation>
  </message>
  <message>
   <source>running gear</source>
   <translation>Laufwerk</translation>
  </message>
  <message>
   <source>tracks</source>
   <translation>Ketten</translation>
  </message>
  <message>
   <source>fittings</source>
   <translation>Beschläge</translation>
  </message>
  <message>
   <source>figure</source>
   <translation>Figur</translation>
  </message>
  <message>
   <source>roof</source>
   <translation>Dach</translation>
  </message>
  <message>
   <source>order of {model}</source>
   <translation>Ablauf von {model}</translation>
  </message>
  <message>
   <source>done before it came into the book</source>
   <translation>erledigt, bevor es ins Buch kam</translation>
  </message>
  <message>
   <source>as {model} was painted</source>
   <translation>wie {model} bemalt wurde</translation>
  </message>
 </context>
 <context>
  <name>hiding</name>
  <message>
   <source>hides well</source>
   <translation>deckt gut</translation>
  </message>
  <message>
   <source>hides as most do</source>
   <translation>deckt wie die meisten</translation>
  </message>
  <message>
   <source>hides badly</source>
   <translation>deckt schlecht</translation>
  </message>
  <message>
   <source>lets it through</source>
   <translation>lässt es durch</translation>
  </message>
 </context>
 <context>
  <name>kind</name>
  <message>
   <source>wheeled vehicle</source>
   <translation>Radfahrzeug</translation>
  </message>
  <message>
   <source>tracked vehicle</source>
   <translation>Kettenfahrzeug</translation>
  </message>
  <message>
   <source>car</source>
   <translation>Pkw</translation>
  </message>
  <message>
   <source>rail vehicle</source>
   <translation>Schienenfahrzeug</translation>
  </message>
  <message>
   <source>boat</source>
   <translation>Boot</translation>
  </message>
  <message>
   <source>aircraft</source>
   <translation>Flugzeug</translation>
  </message>
  <message>
   <source>figure</source>
   <translation>Figur</translation>
  </message>
  <message>
   <source>building</source>
   <translation>Gebäude</translation>
  </message>
  <message>
   <source>other</source>
   <translation>anderes</translation>
  </message>
 </context>
 <context>
  <name>material</name>
  <message>
   <source>hard styrene</source>
   <translation>Polystyrol</translation>
  </message>
  <message>
   <source>resin</source>
   <translation>Resin</translation>
  </message>
  <message>
   <source>3-D print</source>
   <translation>3D-Druck</translation>
  </message>
  <message>
   <source>soft polymer</source>
   <translation>weicher Kunststoff</translation>
  </message>
  <message>
   <source>metal</source>
   <translation>Metall</translation>
  </message>
  <message>
   <source>clear plastic</source>
   <translation>klarer Kunststoff</translation>
  </message>
  <message>
   <source>cast metal</source>
   <translation>Metallguss</translation>
  </message>
  <message>
   <source>photo-etched metal</source>
   <translation>geätztes Metall</translation>
  </message>
  <message>
   <source>soft vinyl</source>
   <translation>weiches Vinyl</translation>
  </message>
  <message>
   <source>wood</source>
   <translation>Holz</translation>
  </message>
 </context>
 <context>
  <name>movement</name>
  <message>
   <source>still</source>
   <translation>still</translation>
  </message>
  <message>
   <source>room</source>
   <translation>wie im Zimmer</translation>
  </message>
  <message>
   <source>fan</source>
   <translation>Lüfter</translation>
  </message>
  <message>
   <source>box</source>
   <translation>geschlossener Kasten</translation>
  </message>
 </context>
 <context>
  <name>option</name>
  <message>
   <source>airbrush</source>
   <translation>Airbrush</translation>
  </message>
  <message>
   <source>tool</source>
   <translation>Werkzeug</translation>
  </message>
  <message>
   <source>thin even coats; each load is cleaned out</source>
   <translation>dünne, gleichmäßige Schichten; jede Füllung wird ausgespült</translation>
  </message>
  <message>
   <source>brush</source>
   <translation>Pinsel</translation>
  </message>
  <message>
   <source>two thin coats instead of one; nothing to set up</source>
   <translation>zwei dünne Schichten statt einer; nichts zu rüsten</translation>
  </message>
  <message>
   <source>spray can</source>
   <translation>Sprühdose</translation>
  </message>
  <message>
   <source>primer, base and clear coats from a can in daylight; the rest by brush</source>
   <translation>Grundierung, Grundfarbe und Klarlack aus der Dose bei Tageslicht; der Rest mit dem Pinsel</translation>
  </message>
  <message>
   <source>wash first</source>
   <translation>zuerst waschen</translation>
  </message>
  <message>
   <source>release agent and fingerprints keep primer off; resin and cast metal always</source>
   <translation>Trennmittel und Fingerabdrücke halten die Grundierung ab; Resin und Metallguss immer</translation>
  </message>
  <message>
   <source>dry-brushed edges</source>
   <translation>trockengemalte Kanten</translation>
  </message>
  <message>
   <source>edges catch the light; ten minutes</source>
   <translation>Kanten fangen das Licht; zehn Minuten</translation>
  </message>
  <message>
   <source>decals</source>
   <translation>Abziehbilder</translation>
  </message>
  <message>
   <source>over gloss, pressed, sealed</source>
   <translation>auf Glanzlack, angedrückt, versiegelt</translation>
  </message>
  <message>
   <source>look over the primer</source>
   <translation>Grundierung durchsehen</translation>
  </message>
  <message>
   <source>primer shows seams; sand, touch up, prime again there</source>
   <translation>Grundierung zeigt Nähte; schleifen, ausbessern, dort noch einmal grundieren</translation>
  </message>
  <message>
   <source>one colour</source>
   <translation>eine Farbe</translation>
  </message>
  <message>
   <source>camouflage</source>
   <translation>Tarnung</translation>
  </message>
  <message>
   <source>two colours</source>
   <translation>zwei Farben</translation>
  </message>
  <message>
   <source>freehand over the base</source>
   <translation>freihändig über die Grundfarbe</translation>
  </message>
  <message>
   <source>three colours</source>
   <translation>drei Farben</translation>
  </message>
  <message>
   <source>freehand, one after the other</source>
   <translation>freihändig, eine nach der anderen</translation>
  </message>
  <message>
   <source>chips by sponge</source>
   <translation>Abplatzer mit dem Schwamm</translation>
  </message>
  <message>
   <source>chipping</source>
   <translation>Abplatzer</translation>
  </message>
  <message>
   <source>dabbed on, small and dark</source>
   <translation>aufgetupft, klein und dunkel</translation>
  </message>
  <message>
   <source>chips by fluid</source>
   <translation>Abplatzer mit Flüssigkeit</translation>
  </message>
  <message>
   <source>rubbed through the base; rub within the hour</source>
   <translation>durch die Grundfarbe gerieben; binnen einer Stunde reiben</translation>
  </message>
  <message>
   <source>no chips</source>
   <translation>keine Abplatzer</translation>
  </message>
  <message>
   <source>chips before wash</source>
   <translation>Abplatzer vor dem Washing</translation>
  </message>
  <message>
   <source>chips and wash</source>
   <translation>Abplatzer und Washing</translation>
  </message>
  <message>
   <source>the wash tones them down</source>
   <translation>das Washing dämpft sie</translation>
  </message>
  <message>
   <source>chips after wash</source>
   <translation>Abplatzer nach dem Washing</translation>
  </message>
  <message>
   <source>they stay crisp</source>
   <translation>sie bleiben scharf</translation>
  </message>
  <message>
   <source>wash after decals</source>
   <translation>Washing nach den Abziehbildern</translation>
  </message>
  <message>
   <source>wash and decals</source>
   <translation>Washing und Abziehbilder</translation>
  </message>
  <message>
   <source>dirt on markings too</source>
   <translation>Schmutz auch auf den Markierungen</translation>
  </message>
  <message>
   <source>wash before decals</source>
   <translation>Washing vor den Abziehbildern</translation>
  </message>
  <message>
   <source>markings stay clean</source>
   <translation>Markierungen bleiben sauber</translation>
  </message>
  <message>
   <source>filter</source>
   <translation>Filter</translation>
  </message>
  <message>
   <source>a thin tint that draws the colours together</source>
   <translation>ein dünner Ton, der die Farben zusammenführt</translation>
  </message>
  <message>
   <source>oil wash</source>
   <translation>Ölwashing</translation>
  </message>
  <message>
   <source>edges and recesses; must be wiped within the hour</source>
   <translation>Kanten und Vertiefungen; binnen einer Stunde abzunehmen</translation>
  </message>
  <message>
   <source>gloss under the wash</source>
   <translation>Glanzlack unter dem Washing</translation>
  </message>
  <message>
   <source>under the wash</source>
   <translation>unter dem Washing</translation>
  </message>
  <message>
   <source>it runs and wipes clean</source>
   <translation>es läuft und lässt sich sauber abnehmen</translation>
  </message>
  <message>
   <source>flat under the wash</source>
   <translation>Mattlack unter dem Washing</translation>
  </message>
  <message>
   <source>it grips, as grime</source>
   <translation>es haftet wie Schmutz</translation>
  </message>
  <message>
   <source>metal edges</source>
   <translation>Metallkanten</translation>
  </message>
  <message>
   <source>graphite, after the matte clear, which would dull it</source>
   <translation>Graphit, nach dem matten Klarlack, der ihn stumpf machte</translation>
  </message>
  <message>
   <source>pigments</source>
   <translation>Pigmente</translation>
  </message>
  <message>
   <source>dust and dry mud, after the matte clear</source>
   <translation>Staub und trockener Schlamm, nach dem Mattlack</translation>
  </message>
  <message>
   <source>pigments left loose</source>
   <translation>Pigmente lose lassen</translation>
  </message>
  <message>
   <source>pigments held</source>
   <translation>Halt der Pigmente</translation>
  </message>
  <message>
   <source>not to be handled</source>
   <translation>nicht zum Anfassen</translation>
  </message>
  <message>
   <source>pigments fixed</source>
   <translation>Pigmente fixieren</translation>
  </message>
  <message>
   <source>stands handling; darkens a little</source>
   <translation>verträgt Anfassen; dunkelt etwas nach</translation>
  </message>
  <message>
   <source>number plates and lettering</source>
   <translation>Kennzeichen und Beschriftung</translation>
  </message>
  <message>
   <source>panel-line wash</source>
   <translation>Washing in den Blechstößen</translation>
  </message>
  <message>
   <source>waterborne, over the gloss, wiped at once</source>
   <translation>auf Wasserbasis, über Glanzlack, sofort abgenommen</translation>
  </message>
  <message>
   <source>gloss finish</source>
   <translation>glänzend lackiert</translation>
  </message>
  <message>
   <source>sheen</source>
   <translation>Glanz</translation>
  </message>
  <message>
   <source>a road vehicle well kept</source>
   <translation>ein gut gepflegtes Straßenfahrzeug</translation>
  </message>
  <message>
   <source>satin finish</source>
   <translation>seidenmatt lackiert</translation>
  </message>
  <message>
   <source>a working vehicle; small models look right</source>
   <translation>ein Arbeitsfahrzeug; kleine Modelle wirken so richtig</translation>
  </message>
  <message>
   <source>second colour below</source>
   <translation>zweite Farbe darunter</translation>
  </message>
  <message>
   <source>patches that show where the white has gone</source>
   <translation>Flecken, die zeigen, wo das Weiß fort ist</translation>
  </message>
  <message>
   <source>under the white, and worn with it</source>
   <translation>unter dem Weiß und mit ihm abgenutzt</translation>
  </message>
  <message>
   <source>rust and dirt run over the white</source>
   <translation>Rost und Schmutz laufen über das Weiß</translation>
  </message>
  <message>
   <source>slush low down, after the matte clear</source>
   <translation>Matsch unten herum, nach dem Mattlack</translation>
  </message>
  <message>
   <source>light from above</source>
   <translation>Licht von oben</translation>
  </message>
  <message>
   <source>white primer from above; shade below stays grey</source>
   <translation>weiße Grundierung von oben; Schatten darunter bleiben grau</translation>
  </message>
  <message>
   <source>waterborne shading</source>
   <translation>Schattierung auf Wasserbasis</translation>
  </message>
  <message>
   <source>shading</source>
   <translation>Schattierung</translation>
  </message>
  <message>
   <source>ready in an evening</source>
   <translation>an einem Abend fertig</translation>
  </message>
  <message>
   <source>oil shading</source>
   <translation>Schattierung mit Öl</translation>
  </message>
  <message>
   <source>over a gloss clear; needs days to dry</source>
   <translation>über glänzendem Klarlack; muss tagelang trocknen</translation>
  </message>
  <message>
   <source>highlights</source>
   <translation>Lichter</translation>
  </message>
  <message>
   <source>the palest tone on what faces the light</source>
   <translation>der hellste Ton auf allem, was zum Licht zeigt</translation>
  </message>
  <message>
   <source>wet spots</source>
   <translation>feuchte Stellen</translation>
  </message>
  <message>
   <source>gloss on eyes and lips, after the matte clear</source>
   <translation>Glanz auf Augen und Lippen, nach dem Mattlack</translation>
  </message>
  <message>
   <source>patches of a second tone</source>
   <translation>Flecken in einem zweiten Ton</translation>
  </message>
  <message>
   <source>no two stones are alike</source>
   <translation>kein Stein gleicht dem anderen</translation>
  </message>
  <message>
   <source>moss and damp</source>
   <translation>Moos und Feuchte</translation>
  </message>
  <message>
   <source>greens low down and in the shade</source>
   <translation>Grüntöne unten herum und im Schatten</translation>
  </message>
  <message>
   <source>matte clear</source>
   <translation>matter Klarlack</translation>
  </message>
  <message>
   <source>for what is handled on a table</source>
   <translation>für alles, was auf dem Tisch angefasst wird</translation>
  </message>
  <message>
   <source>dust in corners, after everything else</source>
   <translation>Staub in den Ecken, nach allem anderen</translation>
  </message>
 </context>
 <context>
  <name>outline</name>
  <message>
   <source>{n} piece of work</source>
   <translation>{n} Arbeit</translation>
  </message>
  <message>
   <source>{n} pieces of work</source>
   <translation>{n} Arbeiten</translation>
  </message>
  <message>
   <source>goes on alone until then; hands are free from {time}</source>
   <translation>läuft bis dann allein weiter; die Hände sind ab {time} frei</translation>
  </message>
  <message>
   <source>{work} · {model}: {parts}</source>
   <translation>{work} · {model}: {parts}</translation>
  </message>
  <message>
   <source>stood here before the last change</source>
   <translation>stand vor der letzten Änderung hier</translation>
  </message>
  <message>
   <source>never dries in this air</source>
   <translation>trocknet in dieser Luft nie</translation>
  </message>
  <message>
   <source>waited out</source>
   <translation>abgewartet</translation>
  </message>
  <message>
   <source>dries until it is {state}</source>
   <translation>trocknet, bis er {state} ist</translation>
  </message>
  <message>
   <source>for {work}</source>
   <translation>für {work}</translation>
  </message>
  <message>
   <source>must have ended</source>
   <translation>muss beendet sein</translation>
  </message>
  <message>
   <source>must have begun</source>
   <translation>muss begonnen sein</translation>
  </message>
 </context>
 <context>
  <name>part</name>
  <message>
   <source>wheels</source>
   <translation>Räder</translation>
  </message>
  <message>
   <source>tracks</source>
   <translation>Ketten</translation>
  </message>
  <message>
   <source>running gear</source>
   <translation>Laufwerk</translation>
  </message>
  <message>
   <source>tools</source>
   <translation>Werkzeug</translation>
  </message>
  <message>
   <source>stowage</source>
   <translation>Zuladung</translation>
  </message>
  <message>
   <source>base</source>
   <translation>Sockel</translation>
  </message>
  <message>
   <source>fittings</source>
   <translation>Beschläge</translation>
  </message>
  <message>
   <source>glazing</source>
   <translation>Verglasung</translation>
  </message>
  <message>
   <source>glue faces</source>
   <translation>Klebeflächen</translation>
  </message>
 </context>
 <context>
  <name>preparation</name>
  <message>
   <source>none</source>
   <translation>keine</translation>
  </message>
  <message>
   <source>wipe</source>
   <translation>abwischen</translation>
  </message>
  <message>
   <source>scuff</source>
   <translation>anschleifen</translation>
  </message>
  <message>
   <source>tie coat</source>
   <translation>Haftschicht</translation>
  </message>
 </context>
 <context>
  <name>reached</name>
  <message>
   <source>nothing yet</source>
   <translation>noch nichts</translation>
  </message>
  <message>
   <source>primed</source>
   <translation>grundiert</translation>
  </message>
  <message>
   <source>base coated</source>
   <translation>Grundfarbe drauf</translation>
  </message>
  <message>
   <source>all colours on</source>
   <translation>alle Farben drauf</translation>
  </message>
  <message>
   <source>decals on</source>
   <translation>Abziehbilder drauf</translation>
  </message>
 </context>
 <context>
  <name>reasons</name>
  <message>
   <source>{name} · {model}</source>
   <translation>{name} · {model}</translation>
  </message>
  <message>
   <source>{stage} {coat}/{coats}</source>
   <translation>{stage} {coat}/{coats}</translation>
  </message>
  <message>
   <source>{stage}, part {number}</source>
   <translation>{stage}, Teil {number}</translation>
  </message>
  <message>
   <source>{day} {start}–{end} · {length}</source>
   <translation>{day} {start}–{end} · {length}</translation>
  </message>
  <message>
   <source>{coating}, {tool}</source>
   <translation>{coating}, {tool}</translation>
  </message>
  <message>
   <source>Hands for {length}, then it goes on alone until {time}.</source>
   <translation>Hände für {length}, dann läuft es allein weiter bis {time}.</translation>
  </message>
  <message>
   <source>Can be done at once.</source>
   <translation>Kann sofort getan werden.</translation>
  </message>
  <message>
   <source>It is best done {at}, after {about}.</source>
   <translation>Am besten {at}, nach {about}.</translation>
  </message>
  <message>
   <source>Its window after {about} opens {at}.</source>
   <translation>Das Fenster nach {about} öffnet {at}.</translation>
  </message>
  <message>
   <source>No bench time before {at}, set-up included.</source>
   <translation>Keine Bastelzeit vor {at}, Rüsten eingerechnet.</translation>
  </message>
  <message>
   <source>Hands are busy until {at}.</source>
   <translation>Die Hände sind bis {at} beschäftigt.</translation>
  </message>
  <message>
   <source>The airbrush is busy with another colour until {at}.</source>
   <translation>Die Airbrush ist bis {at} mit einer anderen Farbe belegt.</translation>
  </message>
  <message>
   <source>Quiet hours until {at}, and it smells.</source>
   <translation>Ruhezeit bis {at}, und es riecht.</translation>
  </message>
  <message>
   <source>Quiet hours until {at}: no compressor.</source>
   <translation>Ruhezeit bis {at}: kein Kompressor.</translation>
  </message>
  <message>
   <source>A spray can needs daylight: from {at}.</source>
   <translation>Eine Sprühdose braucht Tageslicht: ab {at}.</translation>
  </message>
  <message>
   <source>The air is unfit for it until {at}.</source>
   <translation>Die Luft taugt bis {at} nicht dafür.</translation>
  </message>
  <message>
   <source>No drying place is free before {at}.</source>
   <translation>Kein Trockenplatz ist vor {at} frei.</translation>
  </message>
  <message>
   <source>You pinned it here.</source>
   <translation>Sie haben es hier angeheftet.</translation>
  </message>
  <message>
   <source>{about} comes first, until {at}.</source>
   <translation>{about} geht vor, bis {at}.</translation>
  </message>
  <message>
   <source>Already logged.</source>
   <translation>Schon im Logbuch.</translation>
  </message>
  <message>
   <source>Waits until {at}, so that {about} can follow in time.</source>
   <translation>Wartet bis {at}, damit {about} rechtzeitig folgen kann.</translation>
  </message>
  <message>
   <source>Waits so that the next step can follow in time.</source>
   <translation>Wartet, damit der nächste Schritt rechtzeitig folgen kann.</translation>
  </message>
  <message>
   <source>Needs two people; they are there from {at}.</source>
   <translation>Braucht zwei Personen; sie sind ab {at} da.</translation>
  </message>
  <message>
   <source>Its films are {state} {at}.</source>
   <translation>Die Filme sind {at} {state}.</translation>
  </message>
  <message>
   <source>The film of {about} opens {at}.</source>
   <translation>Der Film von {about} öffnet {at}.</translation>
  </message>
  <message>
   <source>The film of {about} is {state} {at}.</source>
   <translation>Der Film von {about} ist {at} {state}.</translation>
  </message>
  <message>
   <source>{before} must come first</source>
   <translation>{before} muss vorher kommen</translation>
  </message>
  <message>
   <source>never in this air</source>
   <translation>nie in dieser Luft</translation>
  </message>
  <message>
   <source>{at}: the film of {before} is {state}</source>
   <translation>{at}: Der Film von {before} ist {state}</translation>
  </message>
  <message>
   <source>{at}: the waiting time after {before} is over</source>
   <translation>{at}: Die Wartezeit nach {before} ist um</translation>
  </message>
  <message>
   <source>{at}: best done from then on, counted from {before}</source>
   <translation>{at}: von da an am besten, gerechnet ab {before}</translation>
  </message>
  <message>
   <source>{at}: must have ended by then, counted from {before}</source>
   <translation>{at}: muss bis dahin beendet sein, gerechnet ab {before}</translation>
  </message>
  <message>
   <source>{at}: must have begun by then, counted from {before}</source>
   <translation>{at}: muss bis dahin begonnen sein, gerechnet ab {before}</translation>
  </message>
 </context>
 <context>
  <name>role</name>
  <message>
   <source>decal bed</source>
   <translation>Klarlack unter Abziehbildern</translation>
  </message>
  <message>
   <source>seal</source>
   <translation>Versiegelung</translation>
  </message>
  <message>
   <source>barrier</source>
   <translation>Sperrschicht</translation>
  </message>
  <message>
   <source>final</source>
   <translation>Schlusslack</translation>
  </message>
 </context>
 <context>
  <name>said</name>
  <message>
   <source>common practice, no source</source>
   <translation>gängige Praxis, ohne Quelle</translation>
  </message>
  <message>
   <source>°C</source>
   <translation>°C</translation>
  </message>
  <message>
   <source>{coldest:g} °C is below the {least_c:g} °C of the label</source>
   <translation>{coldest:g} °C liegt unter den {least_c:g} °C des Etiketts</translation>
  </message>
  <message>
   <source>label</source>
   <translation>Etikett</translation>
  </message>
  <message>
   <source>{hottest:g} °C is above the {most_c:g} °C of the label</source>
   <translation>{hottest:g} °C liegt über den {most_c:g} °C des Etiketts</translation>
  </message>
  <message>
   <source>{humidity_pct:g} % RH is above the {most:g} % of the label</source>
   <translation>{humidity_pct:g} % r. F. liegt über den {most:g} % des Etiketts</translation>
  </message>
  <message>
   <source>only {margin:.1f} °C above the dew point; 3 °C is needed, or moisture settles under the coat</source>
   <translation>nur {margin:.1f} °C über dem Taupunkt; 3 °C sind nötig, sonst schlägt sich Feuchte unter der Schicht nieder</translation>
  </message>
  <message>
   <source>ISO 8502-4:2017; 5 °F in UFC 3-190-06 par. 9.6.6</source>
   <translation>ISO 8502-4:2017; 5 °F in UFC 3-190-06 Abs. 9.6.6</translation>
  </message>
  <message>
   <source>marginal: {margin:.2f} °C above the dew point; 3 °C is needed, 5 °F (2.8 °C) in US texts</source>
   <translation>knapp: {margin:.2f} °C über dem Taupunkt; 3 °C sind nötig, in US-Texten 5 °F (2,8 °C)</translation>
  </message>
  <message>
   <source>ISO 8502-4:2017; UFC 3-190-06 par. 9.6.6</source>
   <translation>ISO 8502-4:2017; UFC 3-190-06 Abs. 9.6.6</translation>
  </message>
  <message>
   <source>at {coldest:g} °C a waterborne film does not flow together (taken as below {least:g} °C; the data sheet has its own)</source>
   <translation>bei {coldest:g} °C verfließt ein wasserverdünnbarer Film nicht (angenommen unter {least:g} °C; das Datenblatt nennt den eigenen Wert)</translation>
  </message>
  <message>
   <source>ISO 2115 (least film-forming temperature); the figure is assumed</source>
   <translation>ISO 2115 (Mindestfilmbildetemperatur); der Wert ist angenommen</translation>
  </message>
  <message>
   <source>below 10 °C films stay tacky for hours and catch dust</source>
   <translation>unter 10 °C bleiben Filme stundenlang klebrig und fangen Staub</translation>
  </message>
  <message>
   <source>TM 43-0139 par. 5-31</source>
   <translation>TM 43-0139 Abs. 5-31</translation>
  </message>
  <message>
   <source>below 15 °C paint sprays and flows badly; warm the room first</source>
   <translation>unter 15 °C spritzt und verläuft Farbe schlecht; erst den Raum wärmen</translation>
  </message>
  <message>
   <source>above 32 °C the coat dries before it has flowed</source>
   <translation>über 32 °C trocknet die Schicht, bevor sie verlaufen ist</translation>
  </message>
  <message>
   <source>TM 55-1500-345-23 (10 to 32 °C)</source>
   <translation>TM 55-1500-345-23 (10 bis 32 °C)</translation>
  </message>
  <message>
   <source>{damp:g} % RH at {warm:g} °C: the wet film cools itself to about {film:.0f} °C and the dew point is {dew:.0f} °C; moisture condenses in it, it blushes or frosts</source>
   <translation>{damp:g} % r. F. bei {warm:g} °C: Der nasse Film kühlt sich auf etwa {film:.0f} °C ab, und der Taupunkt liegt bei {dew:.0f} °C; Feuchte schlägt sich in ihm nieder, er läuft weiß an oder vereist</translation>
  </message>
  <message>
   <source>UFC 3-190-06 par. 7.4.2 (mechanism); n-butyl acetate stands for the fast solvent, and 2 K of doubt: assumed; near 20 °C it agrees with the 60 and 70 % of common practice</source>
   <translation>UFC 3-190-06 Abs. 7.4.2 (Vorgang); n-Butylacetat steht für das schnelle Lösemittel, dazu 2 K Zweifel: angenommen; um 20 °C passt es zu den 60 und 70 % der üblichen Praxis</translation>
  </message>
  <message>
   <source>{damp:g} % RH: a clear coat sprayed now fogs, or misses its sheen</source>
   <translation>{damp:g} % r. F.: ein jetzt gespritzter Klarlack wird trüb oder verfehlt seinen Glanzgrad</translation>
  </message>
  <message>
   <source>60 % is the usual limit, 70 % always poor: common practice, no source</source>
   <translation>60 % ist die übliche Grenze, 70 % immer schlecht: gängige Praxis, ohne Quelle</translation>
  </message>
  <message>
   <source>{damp:g} % RH: what makes the film flow together may leave before the water</source>
   <translation>{damp:g} % r. F.: Was den Film verfließen lässt, kann vor dem Wasser entweichen</translation>
  </message>
  <message>
   <source>UFC 3-190-06 par. 7.4.2; 85 % is common practice, no source</source>
   <translation>UFC 3-190-06 Abs. 7.4.2; 85 % sind gängige Praxis, ohne Quelle</translation>
  </message>
  <message>
   <source>no spray can may ever be warmer than 50 °C: it can burst; the can's own text rules</source>
   <translation>keine Sprühdose darf je wärmer als 50 °C werden: Sie kann platzen; es gilt, was auf der Dose steht</translation>
  </message>
  <message>
   <source>75/324/EEC (aerosol dispensers), from memory</source>
   <translation>75/324/EWG (Aerosolpackungen), aus dem Gedächtnis</translation>
  </message>
  <message>
   <source>a can below 16 °C spits and leaves a grainy coat; keep it indoors</source>
   <translation>eine Dose unter 16 °C spuckt und hinterlässt eine körnige Schicht; drinnen aufbewahren</translation>
  </message>
  <message>
   <source>a can below 21 °C sprays coarsely; stand it in hand-warm tap water</source>
   <translation>eine Dose unter 21 °C sprüht grob; in handwarmes Leitungswasser stellen</translation>
  </message>
  <message>
   <source>0 % RH has no dew point; give more than 0</source>
   <translation>bei 0 % r. F. gibt es keinen Taupunkt; mehr als 0 angeben</translation>
  </message>
  <message>
   <source>ideal gas at 25 °C; limit: {limit}</source>
   <translation>ideales Gas bei 25 °C; Grenzwert: {limit}</translation>
  </message>
  <message>
   <source>white spirit</source>
   <translation>Testbenzin</translation>
  </message>
  <message>
   <source>NIOSH REL 350 mg/m³ for Stoddard solvent</source>
   <translation>NIOSH REL 350 mg/m³ für Testbenzin (Stoddard solvent)</translation>
  </message>
  <message>
   <source>2-propanol</source>
   <translation>2-Propanol</translation>
  </message>
  <message>
   <source>29 CFR 1910.1000 Table Z-1</source>
   <translation>29 CFR 1910.1000 Tabelle Z-1</translation>
  </message>
  <message>
   <source>n-butyl acetate</source>
   <translation>n-Butylacetat</translation>
  </message>
  <message>
   <source>butanone</source>
   <translation>Butanon</translation>
  </message>
  <message>
   <source>Estimate: {ml:.0f} ml of {solvent} make about {ppm:.0f} ppm in {room:g} m³ without airing; a limit over a working day is {limit:.0f} ppm.</source>
   <translation>Schätzung: {ml:.0f} ml {solvent} ergeben in {room:g} m³ ohne Lüften etwa {ppm:.0f} ppm; ein Grenzwert über einen Arbeitstag ist {limit:.0f} ppm.</translation>
  </message>
  <message>
   <source>vapour in the room</source>
   <translation>Dampf im Raum</translation>
  </message>
  <message>
   <source>Heated box: let solvent flash off in the room first, and keep the lid ajar; in a closed box of {litres:.0f} l {ml:.1f} ml of {solvent} make a quarter of the lower explosive limit.</source>
   <translation>Wärmekiste: Lösemittel zuerst im Raum abdunsten lassen und den Deckel einen Spalt offen halten; in einer geschlossenen Kiste von {litres:.0f} l ergeben {ml:.1f} ml {solvent} ein Viertel der unteren Explosionsgrenze.</translation>
  </message>
  <message>
   <source>29 CFR 1910.94(c)(6); ideal gas at 25 °C; the box is assumed</source>
   <translation>29 CFR 1910.94(c)(6); ideales Gas bei 25 °C; die Kiste ist angenommen</translation>
  </message>
  <message>
   <source>heated box</source>
   <translation>beheizte Box</translation>
  </message>
  <message>
   <source>must lie after start</source>
   <translation>muss nach dem Anfang liegen</translation>
  </message>
  <message>
   <source>give at least 2</source>
   <translation>mindestens 2 angeben</translation>
  </message>
  <message>
   <source>µm</source>
   <translation>µm</translation>
  </message>
  <message>
   <source>not after {above}: {source}</source>
   <translation>nicht nach {above}: {source}</translation>
  </message>
  <message>
   <source>not before {below}: {source}</source>
   <translation>nicht vor {below}: {source}</translation>
  </message>
  <message>
   <source>{source}; × {factor:.2g} for a film of {dry_film_um:g} µm</source>
   <translation>{source}; × {factor:.2g} für einen Film von {dry_film_um:g} µm</translation>
  </message>
  <message>
   <source>filled again: {step} of {model} goes on before it, in another colour</source>
   <translation>noch einmal gefüllt: Vorher kommt {step} von {model} in einer anderen Farbe</translation>
  </message>
  <message>
   <source>filled again: the cup may stand {idle} min only, and no drying place is free for {model} before {at:%H:%M}</source>
   <translation>noch einmal gefüllt: der Becher darf nur {idle} min stehen, und für {model} ist vor {at:%H:%M} kein Trockenplatz frei</translation>
  </message>
  <message>
   <source>filled again: the cup may stand {idle} min only, and {step} of {model} opens at {at:%H:%M}</source>
   <translation>noch einmal gefüllt: Der Becher darf nur {idle} min stehen, und {step} von {model} geht ab {at:%H:%M}</translation>
  </message>
  <message>
   <source>it still runs: the edge tears or creeps</source>
   <translation>er läuft noch: die Kante reißt oder verläuft</translation>
  </message>
  <message>
   <source>it still runs, and takes every mark</source>
   <translation>er läuft noch und nimmt jede Spur an</translation>
  </message>
  <message>
   <source>it sticks to whatever touches it</source>
   <translation>er klebt an allem, was ihn berührt</translation>
  </message>
  <message>
   <source>fingers leave prints in it</source>
   <translation>Finger hinterlassen Abdrücke darin</translation>
  </message>
  <message>
   <source>solvent is shut in: the coat below stays soft, and may wrinkle or crack</source>
   <translation>Lösemittel wird eingeschlossen: die Schicht darunter bleibt weich und kann runzeln oder reißen</translation>
  </message>
  <message>
   <source>tape prints into it, or lifts it off</source>
   <translation>Klebeband drückt sich ein oder hebt ihn ab</translation>
  </message>
  <message>
   <source>the thinner softens it: it smears, or comes off with the cloth</source>
   <translation>der Verdünner weicht ihn an: er schmiert oder kommt mit dem Tuch herunter</translation>
  </message>
  <message>
   <source>it still shrinks below: a hard coat over it crazes</source>
   <translation>darunter schrumpft er noch: eine harte Schicht darüber bekommt feine Risse</translation>
  </message>
  <message>
   <source>the wait that was asked for is not over</source>
   <translation>die verlangte Wartezeit ist noch nicht um</translation>
  </message>
  <message>
   <source>it has set: it comes off with its own thinner only, or not at all</source>
   <translation>es ist angezogen: es geht nur noch mit dem eigenen Verdünner ab, oder gar nicht</translation>
  </message>
  <message>
   <source>the decal has dried: it no longer settles</source>
   <translation>das Decal ist getrocknet: es legt sich nicht mehr an</translation>
  </message>
  <message>
   <source>the coat over the fluid has hardened: it chips in large flakes</source>
   <translation>die Schicht über der Flüssigkeit ist hart: sie platzt in großen Schuppen ab</translation>
  </message>
  <message>
   <source>tape left for long creeps, and lifts paint with it</source>
   <translation>Klebeband, das lange bleibt, kriecht und hebt Farbe mit ab</translation>
  </message>
  <message>
   <source>the film has closed: the next coat holds badly, or lifts it</source>
   <translation>der Film hat sich geschlossen: die nächste Schicht haftet schlecht oder hebt ihn an</translation>
  </message>
  <message>
   <source>over {coating}, which never gets ready in this air</source>
   <translation>über {coating}, die in dieser Luft nie bereit wird</translation>
  </message>
  <message>
   <source>{minutes} min</source>
   <translation>{minutes} min</translation>
  </message>
  <message>
   <source>{hours} h {minutes} min</source>
   <translation>{hours} h {minutes} min</translation>
  </message>
  <message>
   <source>{length} before {coating} was ready</source>
   <translation>{length}, bevor {coating} bereit war</translation>
  </message>
  <message>
   <source>{length} after the window of {coating} had closed</source>
   <translation>{length}, nachdem das Fenster von {coating} sich geschlossen hatte</translation>
  </message>
  <message>
   <source>"{model}" has nothing in its order by which it could be {reached}</source>
   <translation>„{model}“ hat nichts in seinem Ablauf, womit es schon so weit sein könnte: {reached}</translation>
  </message>
  <message>
   <source>is {coat}, but "{step}" has {most}</source>
   <translation>ist {coat}, aber „{step}“ hat {most}</translation>
  </message>
  <message>
   <source>step</source>
   <translation>Schritt</translation>
  </message>
  <message>
   <source>"{step}" coat {coat} is done already; correct its entry, or take it back</source>
   <translation>„{step}“, Schicht {coat}, ist schon getan; den Eintrag berichtigen oder zurücknehmen</translation>
  </message>
  <message>
   <source>nothing is logged of "{step}" coat {coat}</source>
   <translation>von „{step}“, Schicht {coat}, steht nichts im Logbuch</translation>
  </message>
  <message>
   <source>lift what has dried with a swab and the wash's own thinner</source>
   <translation>Angetrocknetes mit Wattestäbchen und der Verdünnung des Washings lösen</translation>
  </message>
  <message>
   <source>wet again with setting fluid, let it soften, press down</source>
   <translation>nochmals mit Weichmacher benetzen, weich werden lassen, andrücken</translation>
  </message>
  <message>
   <source>wet longer and rub with a stiffer brush; stop where the coat below shows</source>
   <translation>länger nässen und mit steiferem Pinsel reiben; aufhören, wo die Schicht darunter erscheint</translation>
  </message>
  <message>
   <source>warm the tape a little, take it off slowly and flat, cut the edge first</source>
   <translation>das Band leicht erwärmen, langsam und flach abziehen, zuerst die Kante einschneiden</translation>
  </message>
  <message>
   <source>must be one of {remedies}</source>
   <translation>muss eines davon sein: {remedies}</translation>
  </message>
  <message>
   <source>{step}; {word}</source>
   <translation>{step}; {word}</translation>
  </message>
  <message>
   <source>coating</source>
   <translation>Mittel</translation>
  </message>
  <message>
   <source>name at least one model that was painted</source>
   <translation>nennen Sie mindestens ein Modell, das bemalt wurde</translation>
  </message>
  <message>
   <source>name what of {model} was painted</source>
   <translation>nennen Sie, was von {model} bemalt wurde</translation>
  </message>
  <message>
   <source>{coating}, beside the plan</source>
   <translation>{coating}, neben dem Plan</translation>
  </message>
  <message>
   <source>done beside the plan: {coating} on {models}</source>
   <translation>neben dem Plan getan: {coating} auf {models}</translation>
  </message>
  <message>
   <source>is too long for one line</source>
   <translation>ist zu lang für eine Zeile</translation>
  </message>
  <message>
   <source>tells no coating and model; write it as {example}</source>
   <translation>nennt kein Mittel und Modell; schreiben Sie es wie {example}</translation>
  </message>
  <message>
   <source>tells no model; write it as {example}</source>
   <translation>nennt kein Modell; schreiben Sie es wie {example}</translation>
  </message>
  <message>
   <source>ml</source>
   <translation>ml</translation>
  </message>
  <message>
   <source>minutes are whole; write 15 min</source>
   <translation>Minuten sind ganz; schreiben Sie 15 min</translation>
  </message>
  <message>
   <source>min</source>
   <translation>min</translation>
  </message>
  <message>
   <source>no coating or mix is called "{name}"</source>
   <translation>kein Mittel und keine Mischung heißt „{name}“</translation>
  </message>
  <message>
   <source>"{name}" may be {several}; write more of it</source>
   <translation>„{name}“ kann {several} sein; schreiben Sie mehr davon</translation>
  </message>
  <message>
   <source>"{name}" is no model, part, tool, kind of work, time or amount</source>
   <translation>„{name}“ ist kein Modell, Teil, Werkzeug, keine Art der Arbeit, Zeit oder Menge</translation>
  </message>
  <message>
   <source>lay it once more</source>
   <translation>noch einmal auftragen</translation>
  </message>
  <message>
   <source>touch up</source>
   <translation>ausbessern</translation>
  </message>
  <message>
   <source>sand and respray</source>
   <translation>schleifen und neu spritzen</translation>
  </message>
  <message>
   <source>strip and start over</source>
   <translation>entlacken und neu beginnen</translation>
  </message>
  <message>
   <source>fix frosting</source>
   <translation>Raureif beheben</translation>
  </message>
  <message>
   <source>fix silvering</source>
   <translation>Silberglanz beheben</translation>
  </message>
  <message>
   <source>lift a tide mark</source>
   <translation>Wasserrand lösen</translation>
  </message>
  <message>
   <source>all of it lies under a mask; take the mask off first</source>
   <translation>alles liegt unter einer Maskierung; sie zuerst abnehmen</translation>
  </message>
  <message>
   <source>no place is called "{reference}"</source>
   <translation>keine Stelle heißt „{reference}“</translation>
  </message>
  <message>
   <source>only a coat can be laid once more; choose another repair</source>
   <translation>nur eine Schicht lässt sich noch einmal auftragen; eine andere Ausbesserung wählen</translation>
  </message>
  <message>
   <source>"{step}" lays nothing there</source>
   <translation>„{step}“ trägt dort nichts auf</translation>
  </message>
  <message>
   <source>no colour lies there that could be touched up</source>
   <translation>dort liegt keine Farbe, die sich ausbessern ließe</translation>
  </message>
  <message>
   <source>touch up by brush: {colour}</source>
   <translation>mit dem Pinsel ausbessern: {colour}</translation>
  </message>
  <message>
   <source>no colour lies there that could be sanded and sprayed anew</source>
   <translation>dort liegt keine Farbe, die sich schleifen und neu spritzen ließe</translation>
  </message>
  <message>
   <source>sand the fault smooth, wet and fine; rinse, let dry, prime bare spots with a brush</source>
   <translation>den Fehler nass und fein glatt schleifen; abspülen, trocknen lassen, blanke Stellen mit dem Pinsel grundieren</translation>
  </message>
  <message>
   <source>no clear coat lies on top that could be frosted</source>
   <translation>obenauf liegt kein Klarlack, der Raureif haben könnte</translation>
  </message>
  <message>
   <source>a wet coat of gloss over the frosting, in dry air; no more matte on it before</source>
   <translation>eine nasse Schicht Glanzlack über den Raureif, bei trockener Luft; vorher keinen Mattlack mehr darauf</translation>
  </message>
  <message>
   <source>no decals lie there that could shine silvery</source>
   <translation>dort liegen keine Abziehbilder, die silbrig glänzen könnten</translation>
  </message>
  <message>
   <source>prick the silvery spots, let setting fluid creep under, press down; repeat when dry</source>
   <translation>die silbrigen Stellen anstechen, Weichmacher darunterkriechen lassen, andrücken; nach dem Trocknen wiederholen</translation>
  </message>
  <message>
   <source>no wash of oil or enamel lies on top; touch it up instead</source>
   <translation>obenauf liegt kein Washing aus Öl oder Enamel; stattdessen ausbessern</translation>
  </message>
  <message>
   <source>do "{next}" first; it is time for that</source>
   <translation>zuerst „{next}“; dafür ist es Zeit</translation>
  </message>
  <message>
   <source>lift the tide mark with a brush just damp with the wash's own thinner, towards an edge</source>
   <translation>den Wasserrand mit einem Pinsel lösen, kaum feucht von der Verdünnung des Washings, zu einer Kante hin</translation>
  </message>
  <message>
   <source>"{step}" is under way; say what is done of it, or take its beginning back</source>
   <translation>„{step}“ ist im Gang; melden, was davon getan ist, oder den Beginn zurücknehmen</translation>
  </message>
  <message>
   <source>"{step}" is done already</source>
   <translation>„{step}“ ist schon getan</translation>
  </message>
  <message>
   <source>a {stage} is done in one go, or not at all</source>
   <translation>{stage}: in einem Zug oder gar nicht</translation>
  </message>
  <message>
   <source>none of it is done; nothing is parted</source>
   <translation>nichts davon ist getan; es gibt nichts zu teilen</translation>
  </message>
  <message>
   <source>all of it is done; say that it is done</source>
   <translation>alles davon ist getan; als fertig melden</translation>
  </message>
  <message>
   <source>place</source>
   <translation>Stelle</translation>
  </message>
  <message>
   <source>"{reference}" gets nothing from this coat</source>
   <translation>„{reference}“ bekommt von dieser Schicht nichts</translation>
  </message>
  <message>
   <source>{step} (rest)</source>
   <translation>{step} (Rest)</translation>
  </message>
  <message>
   <source>nothing was done there yet; there is nothing to mend</source>
   <translation>dort ist noch nichts getan; es gibt nichts auszubessern</translation>
  </message>
  <message>
   <source>{step}, once more</source>
   <translation>{step}, noch einmal</translation>
  </message>
  <message>
   <source>nothing was laid there that could be stripped</source>
   <translation>dort wurde nichts aufgetragen, was sich entlacken ließe</translation>
  </message>
  <message>
   <source>take the tape off before stripping</source>
   <translation>das Band vor dem Entlacken abnehmen</translation>
  </message>
  <message>
   <source>soak in a stripper that spares the material, closed; try on scrap, label first</source>
   <translation>in einem Entlacker einlegen, der den Werkstoff schont, abgedeckt; an Abfall probieren, das Etikett geht vor</translation>
  </message>
  <message>
   <source>brush the softened paint off, wash, rinse; gloves, goggles, fresh air</source>
   <translation>die erweichte Farbe abbürsten, waschen, spülen; Handschuhe, Schutzbrille, frische Luft</translation>
  </message>
  <message>
   <source>turn it back</source>
   <translation>zurückwenden</translation>
  </message>
  <message>
   <source>{step} (stripped since)</source>
   <translation>{step} (seither entlackt)</translation>
  </message>
  <message>
   <source>the same places come first</source>
   <translation>dieselben Stellen kommen zuerst dran</translation>
  </message>
  <message>
   <source>the mask goes on first</source>
   <translation>zuerst kommt die Maskierung</translation>
  </message>
  <message>
   <source>the edge must not run</source>
   <translation>die Kante darf nicht verlaufen</translation>
  </message>
  <message>
   <source>tape creeps and lifts when left for long</source>
   <translation>Band kriecht und hebt sich, wenn es lange bleibt</translation>
  </message>
  <message>
   <source>written by the person</source>
   <translation>selbst geschrieben</translation>
  </message>
  <message>
   <source>after {step}</source>
   <translation>nach {step}</translation>
  </message>
  <message>
   <source>written on the step, after {step}</source>
   <translation>am Schritt geschrieben, nach {step}</translation>
  </message>
  <message>
   <source>recoat window of {coating}</source>
   <translation>Überlackierfenster von {coating}</translation>
  </message>
  <message>
   <source>{cycle}; remove this or reorder the steps</source>
   <translation>{cycle}; dies entfernen oder die Schritte umordnen</translation>
  </message>
  <message>
   <source>{step} waits for itself</source>
   <translation>{step} wartet auf sich selbst</translation>
  </message>
  <message>
   <source>{step} waits for {other}</source>
   <translation>{step} wartet auf {other}</translation>
  </message>
  <message>
   <source>… ({count} more)</source>
   <translation>… ({count} weitere)</translation>
  </message>
  <message>
   <source>chip rub without chipping fluid</source>
   <translation>Abplatzer reiben ohne Chipping-Flüssigkeit</translation>
  </message>
  <message>
   <source>no chipping fluid lies under the coat, so wet rubbing would not lift it</source>
   <translation>unter der Schicht liegt keine Chipping-Flüssigkeit, nasses Reiben würde sie nicht lösen</translation>
  </message>
  <message>
   <source>chip rub through a clear coat</source>
   <translation>Abplatzer durch einen Klarlack reiben</translation>
  </message>
  <message>
   <source>a clear coat lies over the fluid, so no water reaches it and nothing chips</source>
   <translation>über der Flüssigkeit liegt ein Klarlack; kein Wasser erreicht sie, und nichts platzt ab</translation>
  </message>
  <message>
   <source>move it ahead of {step}</source>
   <translation>vor {step} verschieben</translation>
  </message>
  <message>
   <source>chipping fluid below {step}</source>
   <translation>Chipping-Flüssigkeit unter {step}</translation>
  </message>
  <message>
   <source>lay chipping fluid before {name}</source>
   <translation>Chipping-Flüssigkeit vor {name} auftragen</translation>
  </message>
  <message>
   <source>leave these places out of it</source>
   <translation>diese Stellen davon ausnehmen</translation>
  </message>
  <message>
   <source>chipping fluid never overcoated</source>
   <translation>Chipping-Flüssigkeit nie überlackiert</translation>
  </message>
  <message>
   <source>no colour goes over the fluid, so there is nothing to chip and water takes it off</source>
   <translation>keine Farbe kommt über die Flüssigkeit; so platzt nichts ab, und Wasser nimmt sie weg</translation>
  </message>
  <message>
   <source>move it below {step}</source>
   <translation>unter {step} verschieben</translation>
  </message>
  <message>
   <source>rub chips over {step}</source>
   <translation>Abplatzer über {step} reiben</translation>
  </message>
  <message>
   <source>{next} over {below}</source>
   <translation>{next} auf: {below}</translation>
  </message>
  <message>
   <source>rub the chips and seal them before taping</source>
   <translation>vor dem Abkleben die Abplatzer reiben und versiegeln</translation>
  </message>
  <message>
   <source>lay the fluid only before {step}</source>
   <translation>die Flüssigkeit erst vor {step} auftragen</translation>
  </message>
  <message>
   <source>an oil wash can be wiped back for about an hour, and best after a quarter of one</source>
   <translation>eine Ölwaschung lässt sich etwa eine Stunde lang abwischen, am besten nach einer Viertelstunde</translation>
  </message>
  <message>
   <source>the coat over the chipping fluid soon turns too hard to rub</source>
   <translation>die Schicht über der Chipping-Flüssigkeit wird bald zu hart zum Reiben</translation>
  </message>
  <message>
   <source>another coat from a can goes on within 20 minutes or after a day; between, it wrinkles</source>
   <translation>eine weitere Schicht aus der Dose kommt binnen 20 Minuten darauf oder nach einem Tag; dazwischen wirft sie Falten</translation>
  </message>
  <message>
   <source>common practice, no source; practitioners disagree</source>
   <translation>gängige Praxis, ohne Quelle; die Fachleute sind uneins</translation>
  </message>
  <message>
   <source>wash before or after the decals?</source>
   <translation>Washing vor oder nach den Abziehbildern?</translation>
  </message>
  <message>
   <source>wash after the decals</source>
   <translation>Washing nach den Abziehbildern</translation>
  </message>
  <message>
   <source>dirt lies on the markings too, as on the real thing</source>
   <translation>Schmutz liegt auch auf den Markierungen, wie beim Vorbild</translation>
  </message>
  <message>
   <source>wash before the decals</source>
   <translation>Washing vor den Abziehbildern</translation>
  </message>
  <message>
   <source>panel lines are cleaned off bare paint more easily</source>
   <translation>Blechstöße lassen sich auf blanker Farbe leichter säubern</translation>
  </message>
  <message>
   <source>painted chips before or after the wash?</source>
   <translation>gemalte Abplatzer vor oder nach dem Washing?</translation>
  </message>
  <message>
   <source>chips before the wash</source>
   <translation>Abplatzer vor dem Washing</translation>
  </message>
  <message>
   <source>the wash then tones the chips down with all the rest</source>
   <translation>das Washing dämpft dann die Abplatzer mit allem Übrigen</translation>
  </message>
  <message>
   <source>chips after the wash</source>
   <translation>Abplatzer nach dem Washing</translation>
  </message>
  <message>
   <source>they stay crisp and can be corrected</source>
   <translation>sie bleiben scharf und lassen sich berichtigen</translation>
  </message>
  <message>
   <source>gloss or flat below the wash?</source>
   <translation>Glanz oder Matt unter dem Washing?</translation>
  </message>
  <message>
   <source>gloss or satin below it</source>
   <translation>Glanz oder Seidenglanz darunter</translation>
  </message>
  <message>
   <source>the wash runs along edges and wipes off clean</source>
   <translation>das Washing läuft an Kanten entlang und lässt sich sauber abwischen</translation>
  </message>
  <message>
   <source>flat below it</source>
   <translation>Matt darunter</translation>
  </message>
  <message>
   <source>a wash meant as grime or a filter grips the rough surface</source>
   <translation>ein Washing als Schmutz oder ein Filter hält auf der rauen Oberfläche</translation>
  </message>
  <message>
   <source>pigments fixed, or left as they are?</source>
   <translation>Pigmente fixiert oder belassen?</translation>
  </message>
  <message>
   <source>pigments fixed or coated</source>
   <translation>Pigmente fixiert oder überlackiert</translation>
  </message>
  <message>
   <source>handling does not rub them off</source>
   <translation>Anfassen reibt sie nicht ab</translation>
  </message>
  <message>
   <source>pigments left unsealed</source>
   <translation>Pigmente unversiegelt</translation>
  </message>
  <message>
   <source>fixer and sprays stain them and make them fade</source>
   <translation>Fixierer und Sprühnebel machen sie fleckig und blass</translation>
  </message>
  <message>
   <source>a clear coat between two oil layers?</source>
   <translation>ein Klarlack zwischen zwei Ölschichten?</translation>
  </message>
  <message>
   <source>a clear coat between</source>
   <translation>ein Klarlack dazwischen</translation>
  </message>
  <message>
   <source>the second wash cannot take up the first</source>
   <translation>das zweite Washing kann das erste nicht anlösen</translation>
  </message>
  <message>
   <source>no clear coat between</source>
   <translation>kein Klarlack dazwischen</translation>
  </message>
  <message>
   <source>fewer films, less thickness and dust</source>
   <translation>weniger Filme, weniger Dicke und Staub</translation>
  </message>
  <message>
   <source>dry-brushing below or over the last coat?</source>
   <translation>Trockenmalen unter oder über der letzten Schicht?</translation>
  </message>
  <message>
   <source>dry-brushing below it</source>
   <translation>Trockenmalen darunter</translation>
  </message>
  <message>
   <source>the matte coat holds it and evens its sheen</source>
   <translation>der Mattlack hält es und gleicht den Glanz aus</translation>
  </message>
  <message>
   <source>dry-brushing over it</source>
   <translation>Trockenmalen darüber</translation>
  </message>
  <message>
   <source>metal edges keep their shine, but colour stands out and handling wears it</source>
   <translation>Metallkanten behalten ihren Glanz, aber Farbe sticht heraus und nutzt sich beim Anfassen ab</translation>
  </message>
  <message>
   <source>the oil wash wiped back, or left?</source>
   <translation>das Ölwashing zurückwischen oder stehen lassen?</translation>
  </message>
  <message>
   <source>wiped back</source>
   <translation>zurückgewischt</translation>
  </message>
  <message>
   <source>it stays in recesses, and faces come clean of tide marks</source>
   <translation>es bleibt in Vertiefungen, und Flächen werden frei von Wasserrändern</translation>
  </message>
  <message>
   <source>left as it is</source>
   <translation>so gelassen</translation>
  </message>
  <message>
   <source>as a filter or as grime over all, laid thin</source>
   <translation>als Filter oder als Schmutz über allem, dünn aufgetragen</translation>
  </message>
  <message>
   <source>a clear coat over the last wash or dust?</source>
   <translation>ein Klarlack über dem letzten Washing oder Staub?</translation>
  </message>
  <message>
   <source>a clear coat over it</source>
   <translation>ein Klarlack darüber</translation>
  </message>
  <message>
   <source>sheens are evened, and handling rubs nothing off</source>
   <translation>der Glanz wird gleichmäßig, und Anfassen reibt nichts ab</translation>
  </message>
  <message>
   <source>no clear coat over it</source>
   <translation>kein Klarlack darüber</translation>
  </message>
  <message>
   <source>what is only looked at needs none</source>
   <translation>was nur angesehen wird, braucht keinen</translation>
  </message>
  <message>
   <source>the gate written after {step} closes after {written}, but {coating} is {state} after {needs} at the soonest; no moment is left</source>
   <translation>die nach {step} geschriebene Bedingung schließt nach {written}, aber {coating} ist frühestens nach {needs} {state}; kein Zeitpunkt bleibt</translation>
  </message>
  <message>
   <source>the gate written after {step} says {written}, but {coating} is {state} after {needs} at the soonest; the plan waits for the film</source>
   <translation>die nach {step} geschriebene Bedingung sagt {written}, aber {coating} ist frühestens nach {needs} {state}; der Plan wartet auf den Film</translation>
  </message>
  <message>
   <source>written gate against the film</source>
   <translation>geschriebene Bedingung gegen den Film</translation>
  </message>
  <message>
   <source>take the written gate off it</source>
   <translation>die geschriebene Bedingung wegnehmen</translation>
  </message>
  <message>
   <source>{n} min</source>
   <translation>{n} min</translation>
  </message>
  <message>
   <source>{n} h</source>
   <translation>{n} h</translation>
  </message>
  <message>
   <source>{n} days</source>
   <translation>{n} Tagen</translation>
  </message>
  <message>
   <source>fluorescent colour is thin and glows only over white; lay white below it</source>
   <translation>Leuchtfarbe ist dünn und leuchtet nur über Weiß; Weiß darunter auftragen</translation>
  </message>
  <message>
   <source>lay white below it</source>
   <translation>Weiß darunter auftragen</translation>
  </message>
  <message>
   <source>a mirror finish shows every grain; it wants a gloss base, mostly black</source>
   <translation>eine spiegelnde Oberfläche zeigt jedes Korn; sie will einen glänzenden Grund, meist Schwarz</translation>
  </message>
  <message>
   <source>lay gloss black below it</source>
   <translation>glänzendes Schwarz darunter auftragen</translation>
  </message>
  <message>
   <source>a shining metallic looks grainy over a matte coat; it wants a smooth base</source>
   <translation>glänzendes Metallic wirkt über einer matten Schicht körnig; es will einen glatten Grund</translation>
  </message>
  <message>
   <source>a matte clear takes the shine of the metallic below it</source>
   <translation>matter Klarlack nimmt dem Metallic darunter den Glanz</translation>
  </message>
  <message>
   <source>any clear coat takes the shine of a mirror finish; leave it as it is</source>
   <translation>jeder Klarlack nimmt einer spiegelnden Oberfläche den Glanz; sie bleibt, wie sie ist</translation>
  </message>
  <message>
   <source>a matte clear takes the shine of graphite; rub it on after that</source>
   <translation>matter Klarlack nimmt Graphit den Glanz; erst danach aufreiben</translation>
  </message>
  <message>
   <source>tape lifts and dulls a mirror finish; lay it last, beside what is masked</source>
   <translation>Klebeband hebt eine spiegelnde Oberfläche ab und macht sie stumpf; zuletzt auftragen, neben dem Maskierten</translation>
  </message>
  <message>
   <source>tape lifts flakes of a metallic; try tape made less sticky on a hidden place</source>
   <translation>Klebeband hebt Plättchen des Metallics ab; entschärftes Band an einer verdeckten Stelle probieren</translation>
  </message>
  <message>
   <source>base below {step}</source>
   <translation>Grund unter {step}</translation>
  </message>
  <message>
   <source>{effect} on the wrong base</source>
   <translation>{effect} auf falschem Grund</translation>
  </message>
  <message>
   <source>clear over a shine</source>
   <translation>Klarlack über Glanz</translation>
  </message>
  <message>
   <source>move it behind {name}</source>
   <translation>hinter {name} stellen</translation>
  </message>
  <message>
   <source>tape on a {effect} finish</source>
   <translation>Klebeband auf Oberfläche: {effect}</translation>
  </message>
  <message>
   <source>strong solvent on polish gloss</source>
   <translation>starkes Lösemittel auf Polierglanz</translation>
  </message>
  <message>
   <source>alcohol and lacquer thinner dissolve a gloss of the kind of floor polish</source>
   <translation>Alkohol und Nitroverdünnung lösen einen Glanz von der Art der Bodenpolitur</translation>
  </message>
  <message>
   <source>{names} and {n} more</source>
   <translation>{names} und {n} weitere</translation>
  </message>
  <message>
   <source>{step} on {names}: {message}</source>
   <translation>{step} auf {names}: {message}</translation>
  </message>
  <message>
   <source>the matte coat scatters light and hides decal film; what follows spoils its look</source>
   <translation>der Mattlack streut Licht und verbirgt den Trägerfilm der Abziehbilder; was folgt, verdirbt sein Aussehen</translation>
  </message>
  <message>
   <source>gloss wash over the matte coat</source>
   <translation>glänzendes Washing über dem Mattlack</translation>
  </message>
  <message>
   <source>a gloss wash leaves shiny patches on the matte coat; {why}</source>
   <translation>ein glänzendes Washing hinterlässt Glanzstellen auf dem Mattlack; {why}</translation>
  </message>
  <message>
   <source>matte coat not last</source>
   <translation>Mattlack nicht zuletzt</translation>
  </message>
  <message>
   <source>{names} would go over it; {why}</source>
   <translation>darüber käme: {names}; {why}</translation>
  </message>
  <message>
   <source>move the matte coat behind {step}</source>
   <translation>den Mattlack hinter {step} verschieben</translation>
  </message>
  <message>
   <source>gloss clear (seal) over {step}</source>
   <translation>Glanzlack (Versiegelung) über {step}</translation>
  </message>
  <message>
   <source>decals not sealed</source>
   <translation>Abziehbilder nicht versiegelt</translation>
  </message>
  <message>
   <source>nothing seals the decals; handling and any later wash would lift their edges</source>
   <translation>nichts versiegelt die Abziehbilder; Anfassen und jedes spätere Washing würden ihre Ränder heben</translation>
  </message>
  <message>
   <source>seal the decals with a gloss clear</source>
   <translation>die Abziehbilder mit Glanzlack versiegeln</translation>
  </message>
  <message>
   <source>pressing without decals</source>
   <translation>Andrücken ohne Abziehbilder</translation>
  </message>
  <message>
   <source>no decal lies on top that could be pressed</source>
   <translation>obenauf liegt kein Abziehbild, das sich andrücken ließe</translation>
  </message>
  <message>
   <source>wipe back without a wash</source>
   <translation>Zurückwischen ohne Washing</translation>
  </message>
  <message>
   <source>no wash lies on top that could be wiped back</source>
   <translation>obenauf liegt kein Washing, das sich zurückwischen ließe</translation>
  </message>
  <message>
   <source>move it behind {step}</source>
   <translation>hinter {step} verschieben</translation>
  </message>
  <message>
   <source>pale over dark</source>
   <translation>Hell über Dunkel</translation>
  </message>
  <message>
   <source>colour that hides badly</source>
   <translation>Farbe, die schlecht deckt</translation>
  </message>
  <message>
   <source>colour thinned to a glaze</source>
   <translation>Farbe bis zur Lasur verdünnt</translation>
  </message>
  <message>
   <source>{coating} is thinned so far that it is a glaze and hides nothing; a colour for the airbrush is thinned to about 1 : 1 at most, and a glaze is a filter or a wash</source>
   <translation>{coating} ist so weit verdünnt, dass es eine Lasur ist und nichts deckt; eine Farbe für die Airbrush wird höchstens etwa 1 : 1 verdünnt, und eine Lasur ist ein Filter oder eine Waschung</translation>
  </message>
  <message>
   <source>{coating} hides badly, and {below} shows through one thin coat: about {needed} will hide it, or fewer over a white or pale undercoat</source>
   <translation>{coating} deckt schlecht, und {below} scheint durch eine dünne Schicht: etwa {needed} verdecken es, über weißem oder hellem Grund weniger</translation>
  </message>
  <message>
   <source>{coating} hides badly, and {below} shows through {coats} thin coats: about {needed} will hide it, or fewer over a white or pale undercoat</source>
   <translation>{coating} deckt schlecht, und {below} scheint durch {coats} dünne Schichten: etwa {needed} verdecken es, über weißem oder hellem Grund weniger</translation>
  </message>
  <message>
   <source>{coating} is pale and {below} below it dark: one thin coat will not hide it, about {needed} will; {saving}</source>
   <translation>{coating} ist hell und {below} darunter dunkel: Eine dünne Schicht deckt nicht, etwa {needed} decken; {saving}</translation>
  </message>
  <message>
   <source>{coating} is pale and {below} below it dark: {coats} thin coats will not hide it, about {needed} will; {saving}</source>
   <translation>{coating} ist hell und {below} darunter dunkel: {coats} dünne Schichten decken nicht, etwa {needed} decken; {saving}</translation>
  </message>
  <message>
   <source>a grey or white primer would save coats</source>
   <translation>eine graue oder weiße Grundierung würde Schichten sparen</translation>
  </message>
  <message>
   <source>over {primer} {coats} would do</source>
   <translation>über {primer} würden {coats} reichen</translation>
  </message>
  <message>
   <source>lay {needed} coats of {coating}</source>
   <translation>{needed} Schichten {coating} auftragen</translation>
  </message>
  <message>
   <source>take off {step}</source>
   <translation>{step} abnehmen</translation>
  </message>
  <message>
   <source>mask never taken off</source>
   <translation>Maskierung nie abgenommen</translation>
  </message>
  <message>
   <source>no step takes the mask off; tape creeps, and its glue hardens on the film</source>
   <translation>kein Schritt nimmt die Maskierung ab; Band kriecht, und sein Kleber härtet auf dem Film</translation>
  </message>
  <message>
   <source>take the mask off behind the coats beside it</source>
   <translation>die Maskierung nach den Schichten daneben abnehmen</translation>
  </message>
  <message>
   <source>take it off behind {step}</source>
   <translation>hinter {step} abnehmen</translation>
  </message>
  <message>
   <source>mask for nothing</source>
   <translation>Maske für nichts</translation>
  </message>
  <message>
   <source>it comes off before any coat is laid beside it</source>
   <translation>sie kommt ab, bevor daneben etwas aufgetragen wird</translation>
  </message>
  <message>
   <source>unmask without a mask</source>
   <translation>Abnehmen ohne Maskierung</translation>
  </message>
  <message>
   <source>no mask lies there; either a mask step is missing ahead of it, or it is idle</source>
   <translation>dort liegt keine Maskierung; entweder fehlt davor ein Maskierschritt, oder er ist überflüssig</translation>
  </message>
  <message>
   <source>coat on a masked place</source>
   <translation>Schicht auf maskierter Stelle</translation>
  </message>
  <message>
   <source>a mask covers it, so no coat reaches it</source>
   <translation>eine Maskierung deckt sie ab, keine Schicht erreicht sie</translation>
  </message>
  <message>
   <source>leave the masked places out of it</source>
   <translation>die maskierten Stellen davon ausnehmen</translation>
  </message>
  <message>
   <source>enamel or spray can on soft polymer</source>
   <translation>Enamel oder Sprühdose auf Weichkunststoff</translation>
  </message>
  <message>
   <source>enamel and sprays from a can stay tacky on soft polymer for weeks, or for ever</source>
   <translation>Enamel und Lack aus der Dose bleiben auf Weichkunststoff wochenlang klebrig oder für immer</translation>
  </message>
  <message>
   <source>hard coat on soft polymer</source>
   <translation>harte Schicht auf Weichkunststoff</translation>
  </message>
  <message>
   <source>soft polymer bends, and a hard film on it cracks and flakes</source>
   <translation>Weichkunststoff biegt sich, und ein harter Film darauf reißt und blättert ab</translation>
  </message>
  <message>
   <source>strong solvent on stressed styrene</source>
   <translation>starkes Lösemittel auf gespanntem Polystyrol</translation>
  </message>
  <message>
   <source>strong solvent cracks bare styrene that is snapped together under stress</source>
   <translation>starkes Lösemittel lässt blankes Polystyrol reißen, das unter Spannung zusammengesteckt ist</translation>
  </message>
  <message>
   <source>TM 43-0139 par. 2-26 (enamel thinner and lacquer thinner are not exchanged)</source>
   <translation>TM 43-0139 Abs. 2-26 (Enamel- und Lackverdünnung werden nicht vertauscht)</translation>
  </message>
  <message>
   <source>enamel thinner makes lacquer curdle and stay soft</source>
   <translation>Enamelverdünnung lässt Lack gerinnen und weich bleiben</translation>
  </message>
  <message>
   <source>lacquer thinner is not for enamel; it lifts the coat below</source>
   <translation>Lackverdünnung ist nichts für Enamel; sie hebt die Schicht darunter</translation>
  </message>
  <message>
   <source>water makes lacquer curdle and blush</source>
   <translation>Wasser lässt Lack gerinnen und weiß anlaufen</translation>
  </message>
  <message>
   <source>water and enamel do not mix</source>
   <translation>Wasser und Enamel mischen sich nicht</translation>
  </message>
  <message>
   <source>water and oil do not mix</source>
   <translation>Wasser und Öl mischen sich nicht</translation>
  </message>
  <message>
   <source>water reacts with the hardener of a two-pack</source>
   <translation>Wasser reagiert mit dem Härter eines Zweikomponentenlacks</translation>
  </message>
  <message>
   <source>white spirit makes waterborne paint curdle</source>
   <translation>Testbenzin lässt wasserverdünnbare Farbe gerinnen</translation>
  </message>
  <message>
   <source>white spirit does not mix with alcohol ink</source>
   <translation>Testbenzin mischt sich nicht mit Alkoholtinte</translation>
  </message>
  <message>
   <source>alcohol makes enamel curdle</source>
   <translation>Alkohol lässt Enamel gerinnen</translation>
  </message>
  <message>
   <source>alcohol does not thin oil paint</source>
   <translation>Alkohol verdünnt Ölfarbe nicht</translation>
  </message>
  <message>
   <source>lacquer thinner in an oil wash attacks the coat below</source>
   <translation>Lackverdünnung in einem Ölwashing greift die Schicht darunter an</translation>
  </message>
  <message>
   <source>alcohol uses up the hardener of a two-pack</source>
   <translation>Alkohol verbraucht den Härter eines Zweikomponentenlacks</translation>
  </message>
  <message>
   <source>white spirit throws a two-pack out of solution</source>
   <translation>Testbenzin lässt einen Zweikomponentenlack ausfallen</translation>
  </message>
  <message>
   <source>paints of unlike chemistry curdle, or dry unevenly, in one cup</source>
   <translation>Farben ungleicher Chemie gerinnen in einem Becher oder trocknen ungleich</translation>
  </message>
  <message>
   <source>{what} in {base}</source>
   <translation>{what} in {base}</translation>
  </message>
  <message>
   <source>mix "{mix}" holds {other} ({family}): {reason}</source>
   <translation>Mischung „{mix}“ enthält {other} ({family}): {reason}</translation>
  </message>
  <message>
   <source>use {wanted} in it instead</source>
   <translation>stattdessen {wanted} darin verwenden</translation>
  </message>
  <message>
   <source>turn it over</source>
   <translation>wenden</translation>
  </message>
  <message>
   <source>{next} would go over bare metal; paint grips bare metal badly and rubs off; prime first</source>
   <translation>{next} käme auf blankes Metall; Farbe haftet auf blankem Metall schlecht und reibt sich ab; zuerst grundieren</translation>
  </message>
  <message>
   <source>{next} would go over {below}; {reason}</source>
   <translation>{next} käme auf: {below}; {reason}</translation>
  </message>
  <message>
   <source>scuff the film of {steps} before it</source>
   <translation>den Film von {steps} davor anschleifen</translation>
  </message>
  <message>
   <source>gloss clear ({role}) before {step}</source>
   <translation>Glanzlack ({role}) vor {step}</translation>
  </message>
  <message>
   <source>lay a gloss clear as {role} before it</source>
   <translation>davor einen Glanzlack auftragen: {role}</translation>
  </message>
  <message>
   <source>prime before {step}</source>
   <translation>grundieren vor {step}</translation>
  </message>
  <message>
   <source>prime the bare places before it</source>
   <translation>die blanken Stellen davor grundieren</translation>
  </message>
  <message>
   <source>use {family} instead of {names}</source>
   <translation>{family} statt {names} verwenden</translation>
  </message>
  <message>
   <source>UFC 3-190-06 par. 11.4.2.4 (solvent trapped between coats blisters)</source>
   <translation>UFC 3-190-06 Abs. 11.4.2.4 (zwischen Schichten eingeschlossenes Lösemittel wirft Blasen)</translation>
  </message>
  <message>
   <source>UFC 3-190-06 par. 2.4.2 (strong solvent enters the undercoat)</source>
   <translation>UFC 3-190-06 Abs. 2.4.2 (starkes Lösemittel dringt in den Untergrund)</translation>
  </message>
  <message>
   <source>UFC 3-190-06 par. 2.4.4 (water-borne over smooth cured alkyd bonds badly)</source>
   <translation>UFC 3-190-06 Abs. 2.4.4 (Wasserverdünnbares haftet schlecht auf glattem, gehärtetem Alkyd)</translation>
  </message>
  <message>
   <source>UFC 3-190-06 par. 2.4, 4.2.4 (solvent-soluble film under strong solvent)</source>
   <translation>UFC 3-190-06 Abs. 2.4, 4.2.4 (lösemittellöslicher Film unter starkem Lösemittel)</translation>
  </message>
  <message>
   <source>UFC 3-190-06 par. 4.2.4 (same generic type over itself)</source>
   <translation>UFC 3-190-06 Abs. 4.2.4 (gleiche Art über sich selbst)</translation>
  </message>
  <message>
   <source>US Army TB 43-0242 (1991) par. 5-2 (urethane over lacquer)</source>
   <translation>US Army TB 43-0242 (1991) Abs. 5-2 (Urethan über Lack)</translation>
  </message>
  <message>
   <source>UFC 3-190-06 par. 2.2.3 (a cured thermoset gives no bite)</source>
   <translation>UFC 3-190-06 Abs. 2.2.3 (ein gehärteter Duroplast gibt keinen Halt)</translation>
  </message>
  <message>
   <source>TM 43-0139 par. 5-20 (a coat over too soft an undercoat, or one not dry, splits up)</source>
   <translation>TM 43-0139 Abs. 5-20 (eine Schicht auf zu weichem oder nicht trockenem Untergrund reißt auf)</translation>
  </message>
  <message>
   <source>ISO 9117-6 print-free; the use for masking is common practice</source>
   <translation>ISO 9117-6 abdruckfrei; die Anwendung aufs Abkleben ist gängige Praxis</translation>
  </message>
  <message>
   <source>pigment on gloss</source>
   <translation>Pigment auf Glanz</translation>
  </message>
  <message>
   <source>dry powder finds no hold on a gloss film; a matte coat gives it tooth</source>
   <translation>trockenes Pulver hält nicht auf einem glänzenden Film; eine matte Schicht gibt ihm Halt</translation>
  </message>
  <message>
   <source>chip rub through solvent paint</source>
   <translation>Abplatzer reiben durch Lösemittelfarbe</translation>
  </message>
  <message>
   <source>{family} over the fluid keeps water out: chips come late, in sheets, or not at all; scratch it open, or take a waterborne colour</source>
   <translation>{family} über der Chipping-Flüssigkeit lässt kein Wasser durch: Abplatzer kommen spät, in Fetzen oder gar nicht; aufkratzen oder eine wasserverdünnbare Farbe nehmen</translation>
  </message>
  <message>
   <source>lay a waterborne colour over the fluid</source>
   <translation>eine wasserverdünnbare Farbe über die Chipping-Flüssigkeit auftragen</translation>
  </message>
  <message>
   <source>matte clear before {step}</source>
   <translation>matter Klarlack vor {step}</translation>
  </message>
  <message>
   <source>lay a matte clear before it</source>
   <translation>davor einen matten Klarlack auftragen</translation>
  </message>
  <message>
   <source>fingers hold it firmly</source>
   <translation>Finger halten es fest</translation>
  </message>
  <message>
   <source>another coat goes over it</source>
   <translation>eine weitere Schicht kommt darüber</translation>
  </message>
  <message>
   <source>a wash pools in recesses, where the gloss is thickest and softest</source>
   <translation>ein Washing sammelt sich in Vertiefungen, wo der Glanzlack am dicksten und weichsten ist</translation>
  </message>
  <message>
   <source>masking fluid never taken off</source>
   <translation>Maskierflüssigkeit wird nie abgezogen</translation>
  </message>
  <message>
   <source>no step takes the masking fluid or salt off; it grows into the film</source>
   <translation>kein Schritt nimmt Maskierflüssigkeit oder Salz ab; es wächst in den Film ein</translation>
  </message>
  <message>
   <source>masking fluid that masks nothing</source>
   <translation>Maskierflüssigkeit, die nichts maskiert</translation>
  </message>
  <message>
   <source>nothing is laid over the masking fluid or salt before it comes off</source>
   <translation>über Maskierflüssigkeit oder Salz wird nichts aufgetragen, bevor es abgeht</translation>
  </message>
  <message>
   <source>strong solvent on stretched decals</source>
   <translation>starkes Lösemittel auf gedehnten Decals</translation>
  </message>
  <message>
   <source>the decals were softened and stretched over the relief; a strong solvent lets them pull back and crack. A waterborne clear holds them first, or the first passes are mist</source>
   <translation>die Decals wurden erweicht und über das Relief gedehnt; ein starkes Lösemittel lässt sie zurückziehen und reißen. Erst hält sie ein wasserbasierter Klarlack, oder die ersten Gänge sind Nebel</translation>
  </message>
  <message>
   <source>resin bears release agent from the mould, and paint lets go; wash it first</source>
   <translation>an Resin haftet Trennmittel aus der Form, und Farbe löst sich; zuerst waschen</translation>
  </message>
  <message>
   <source>cast metal leaves the mould with release agent on it; wash it first</source>
   <translation>Metallguss kommt mit Trennmittel aus der Form; zuerst waschen</translation>
  </message>
  <message>
   <source>soft vinyl is oily from the mould, and paint lets go; wash it first</source>
   <translation>weiches Vinyl ist ölig von der Form, und Farbe löst sich; zuerst waschen</translation>
  </message>
  <message>
   <source>photo-etched metal is greasy from handling; degrease it first</source>
   <translation>geätztes Metall ist fettig vom Anfassen; zuerst entfetten</translation>
  </message>
  <message>
   <source>bare metal is greasy from handling; degrease it first</source>
   <translation>blankes Metall ist fettig vom Anfassen; zuerst entfetten</translation>
  </message>
  <message>
   <source>assumed: styrene softens below 100 °C, and thin or strained parts bend from about 60 °C</source>
   <translation>angenommen: Polystyrol erweicht unter 100 °C, und dünne oder gespannte Teile verbiegen sich ab etwa 60 °C</translation>
  </message>
  <message>
   <source>assumed: cast polyurethane bends in hot water</source>
   <translation>angenommen: gegossenes Polyurethan biegt sich in heißem Wasser</translation>
  </message>
  <message>
   <source>assumed: as cast resin</source>
   <translation>angenommen: wie gegossenes Resin</translation>
  </message>
  <message>
   <source>wash before {step}</source>
   <translation>waschen vor {step}</translation>
  </message>
  <message>
   <source>{material} not washed</source>
   <translation>{material} nicht gewaschen</translation>
  </message>
  <message>
   <source>wash it before</source>
   <translation>vorher waschen</translation>
  </message>
  <message>
   <source>colour on bare wood</source>
   <translation>Farbe auf blankem Holz</translation>
  </message>
  <message>
   <source>bare wood drinks the colour and its grain stands up; seal and sand it first</source>
   <translation>blankes Holz saugt die Farbe auf, und seine Fasern stellen sich auf; zuerst versiegeln und schleifen</translation>
  </message>
  <message>
   <source>clear plastic painted over</source>
   <translation>klarer Kunststoff übermalt</translation>
  </message>
  <message>
   <source>primer and colour on all of a part of clear plastic leave nothing to look through; mask the glass, or leave it out</source>
   <translation>Grundierung und Farbe auf allen Stellen eines klaren Teils lassen nichts zum Durchsehen; das Glas maskieren oder ausnehmen</translation>
  </message>
  <message>
   <source>leave the clear part out of it</source>
   <translation>das klare Teil davon ausnehmen</translation>
  </message>
  <message>
   <source>too warm for {material}</source>
   <translation>zu warm für {material}</translation>
  </message>
  <message>
   <source>{location} grows {warmest:g} °C warm, and {material} warps from {limit:g} °C</source>
   <translation>{location} wird {warmest:g} °C warm, und {material} verzieht sich ab {limit:g} °C</translation>
  </message>
  <message>
   <source>cyanoacrylate at clear plastic</source>
   <translation>Sekundenkleber an klarem Kunststoff</translation>
  </message>
  <message>
   <source>the vapour of cyanoacrylate fogs clear plastic; take white glue</source>
   <translation>der Dampf von Sekundenkleber beschlägt klaren Kunststoff; Weißleim nehmen</translation>
  </message>
  <message>
   <source>solvent cement at what it cannot weld</source>
   <translation>Lösemittelkleber an etwas, das er nicht verschweißt</translation>
  </message>
  <message>
   <source>solvent cement welds styrene and no {material}; take cyanoacrylate</source>
   <translation>Lösemittelkleber verschweißt Polystyrol, aber nicht {material}; Sekundenkleber nehmen</translation>
  </message>
  <message>
   <source>both sides in one step</source>
   <translation>beide Seiten in einem Schritt</translation>
  </message>
  <message>
   <source>without a holder it cannot lie on both sides at once; wet paint would touch the bench</source>
   <translation>ohne Halter kann es nicht auf beiden Seiten zugleich liegen; nasse Farbe würde den Tisch berühren</translation>
  </message>
  <message>
   <source>split it by side, with a turn between</source>
   <translation>nach Seiten teilen, mit Wenden dazwischen</translation>
  </message>
  <message>
   <source>topside reached without a turn</source>
   <translation>Oberseite ohne Wenden erreicht</translation>
  </message>
  <message>
   <source>underside reached without a turn</source>
   <translation>Unterseite ohne Wenden erreicht</translation>
  </message>
  <message>
   <source>it has no holder and lies with the topside up; turn it first</source>
   <translation>es hat keinen Halter und liegt mit der Oberseite nach oben; zuerst wenden</translation>
  </message>
  <message>
   <source>it has no holder and lies with the underside up; turn it first</source>
   <translation>es hat keinen Halter und liegt mit der Unterseite nach oben; zuerst wenden</translation>
  </message>
  <message>
   <source>turn it over before and back behind</source>
   <translation>davor wenden und danach zurückwenden</translation>
  </message>
  <message>
   <source>turn {over} back before the join</source>
   <translation>{over} vor dem Zusammenkleben zurückwenden</translation>
  </message>
  <message>
   <source>joined while lying on different sides</source>
   <translation>zusammengeklebt, während sie auf verschiedenen Seiten liegen</translation>
  </message>
  <message>
   <source>{over} was joined with the underside up, the rest with the topside up</source>
   <translation>{over} wurde mit der Unterseite nach oben angeklebt, der Rest mit der Oberseite nach oben</translation>
  </message>
  <message>
   <source>solvent cement welds bare plastic only</source>
   <translation>Lösemittelkleber verschweißt nur blanken Kunststoff</translation>
  </message>
  <message>
   <source>glue holds on paint no better than the paint holds on the part</source>
   <translation>Kleber hält auf Farbe nicht besser als die Farbe auf dem Teil</translation>
  </message>
  <message>
   <source>painted faces glued</source>
   <translation>bemalte Flächen geklebt</translation>
  </message>
  <message>
   <source>{why}; scrape the faces, or mask them before painting</source>
   <translation>{why}; die Flächen blank schaben oder vor dem Bemalen maskieren</translation>
  </message>
  <message>
   <source>scrape the faces as part of the join</source>
   <translation>die Flächen beim Zusammenkleben blank schaben</translation>
  </message>
  <message>
   <source>air that forbids a coat</source>
   <translation>Luft, die eine Schicht verbietet</translation>
  </message>
  <message>
   <source>the air of {location} is unfit for it at every hour: {reason}; warm or dry it, or tick “in any air” on the step</source>
   <translation>die Luft von {location} taugt zu keiner Stunde dafür: {reason}; sie wärmen oder trocknen, oder den Schritt „in jeder Luft“ ankreuzen</translation>
  </message>
  <message>
   <source>part without work</source>
   <translation>Teil ohne Arbeit</translation>
  </message>
  <message>
   <source>no step does anything to {part}; add it to a coat</source>
   <translation>kein Schritt tut etwas an {part}; in eine Schicht aufnehmen</translation>
  </message>
  <message>
   <source>make it a step of {stage}</source>
   <translation>zu einem Schritt „{stage}“ machen</translation>
  </message>
  <message>
   <source>stage that does not fit its coating</source>
   <translation>Arbeitsgang, der nicht zum Lack passt</translation>
  </message>
  <message>
   <source>{coating} ({family}) does not belong to a step of {stage}, so it would be judged as what it is not</source>
   <translation>{coating} ({family}) gehört in keinen Schritt „{stage}“ und würde beurteilt als das, was es nicht ist</translation>
  </message>
  <message>
   <source>gloss laid as the matte coat</source>
   <translation>Glanz als matte Schicht aufgetragen</translation>
  </message>
  <message>
   <source>a gloss coating does not make a matte coat; call it a varnish, or swap it</source>
   <translation>ein glänzender Lack ergibt keine matte Schicht; ihn Klarlack nennen oder tauschen</translation>
  </message>
  <message>
   <source>tool that cannot do it</source>
   <translation>Werkzeug, das es nicht kann</translation>
  </message>
  <message>
   <source>{stage} is not done with {tool}; choose another tool or another stage</source>
   <translation>„{stage}“ macht man nicht mit {tool}; ein anderes Werkzeug oder einen anderen Arbeitsgang wählen</translation>
  </message>
  <message>
   <source>chipping fluid never rubbed</source>
   <translation>Chipping-Flüssigkeit wird nie gerieben</translation>
  </message>
  <message>
   <source>no step rubs the colour over the fluid, so nothing chips and it stays soluble</source>
   <translation>kein Schritt reibt die Farbe über der Flüssigkeit; nichts platzt ab, und sie bleibt löslich</translation>
  </message>
  <message>
   <source>rub it behind {step}</source>
   <translation>hinter {step} reiben</translation>
  </message>
  <message>
   <source>colour over finished chips</source>
   <translation>Farbe über fertigen Abplatzern</translation>
  </message>
  <message>
   <source>it would cover the chips that {name} has just made; lay every colour first</source>
   <translation>sie würde die Abplatzer zudecken, die {name} eben gemacht hat; zuerst alle Farben auftragen</translation>
  </message>
  <message>
   <source>move {name} behind it</source>
   <translation>{name} dahinter stellen</translation>
  </message>
  <message>
   <source>two clear coats in a row</source>
   <translation>zwei Klarlackschichten nacheinander</translation>
  </message>
  <message>
   <source>two clear coats lie right over each other, after {lower}; one of them is enough</source>
   <translation>nach {lower} liegen zwei Klarlackschichten direkt übereinander; eine davon genügt</translation>
  </message>
  <message>
   <source>leave it out there</source>
   <translation>dort weglassen</translation>
  </message>
  <message>
   <source>written gate that nothing can keep</source>
   <translation>geschriebene Bedingung, die nicht einzuhalten ist</translation>
  </message>
  <message>
   <source>the gate written after {step} leaves no moment beside what is known: {why}</source>
   <translation>die Bedingung, die nach {step} geschrieben steht, lässt keinen Augenblick neben dem, was bekannt ist: {why}</translation>
  </message>
  <message>
   <source>, times {detail:g} for detail</source>
   <translation>, mal {detail:g} für Details</translation>
  </message>
  <message>
   <source>{cm2:.3g} cm², typed</source>
   <translation>{cm2:.3g} cm², eingetippt</translation>
  </message>
  <message>
   <source>{cm2:.3g} cm²: measures of {plain_cm2:.3g} cm²{detail}</source>
   <translation>{cm2:.3g} cm²: Maße von {plain_cm2:.3g} cm²{detail}</translation>
  </message>
  <message>
   <source>{cm2:.3g} cm², assumed: {share:.0%} of a box of {all_round_cm2:.3g} cm², the usual size of its kind ({kind}){detail}</source>
   <translation>{cm2:.3g} cm², angenommen: {share:.0%} eines Quaders von {all_round_cm2:.3g} cm², der üblichen Größe seiner Art ({kind}){detail}</translation>
  </message>
  <message>
   <source>{cm2:.3g} cm²: {share:.0%} of a box of its real size, {all_round_cm2:.3g} cm² all round{detail}</source>
   <translation>{cm2:.3g} cm²: {share:.0%} eines Quaders seiner wahren Größe, {all_round_cm2:.3g} cm² ringsum{detail}</translation>
  </message>
  <message>
   <source>, shared by {among} places</source>
   <translation>, auf {among} Stellen verteilt</translation>
  </message>
  <message>
   <source>{cm2:.3g} cm²: a box of its real size is {all_round_cm2:.3g} cm² all round{shared}{detail}</source>
   <translation>{cm2:.3g} cm²: Ein Kasten seiner wirklichen Größe hat rundum {all_round_cm2:.3g} cm²{shared}{detail}</translation>
  </message>
  <message>
   <source>no area given, and the model has no scale such as "1:72"; give one, or area_cm2</source>
   <translation>keine Fläche angegeben, und das Modell hat keinen Maßstab wie „1:72“; ihn oder die Fläche angeben</translation>
  </message>
  <message>
   <source>no area given, and the other places take all {whole:.3g} cm² of the real size; measure it and give area_cm2</source>
   <translation>keine Fläche angegeben, und die anderen Stellen nehmen alle {whole:.3g} cm² der wirklichen Größe; messen und die Fläche angeben</translation>
  </message>
  <message>
   <source>no area given; measure it and give area_cm2</source>
   <translation>keine Fläche angegeben; messen und die Fläche angeben</translation>
  </message>
  <message>
   <source>{text} (all round, a box of {size} m is {area:.0f} cm² at {written})</source>
   <translation>{text} (rundum hat ein Kasten von {size} m {area:.0f} cm² in {written})</translation>
  </message>
  <message>
   <source>a highlight sits on what faces the light</source>
   <translation>eine Aufhellung sitzt auf dem, was dem Licht zugewandt ist</translation>
  </message>
  <message>
   <source>dry-brushing catches raised edges</source>
   <translation>Trockenmalen trifft erhabene Kanten</translation>
  </message>
  <message>
   <source>a wash sits in the recesses</source>
   <translation>ein Washing sitzt in den Vertiefungen</translation>
  </message>
  <message>
   <source>chips sit on edges</source>
   <translation>Abplatzer sitzen an Kanten</translation>
  </message>
  <message>
   <source>weathering is laid here and there</source>
   <translation>Alterung kommt hier und da hin</translation>
  </message>
  <message>
   <source>given by the step</source>
   <translation>vom Schritt angegeben</translation>
  </message>
  <message>
   <source>one of {n} colours that share the place</source>
   <translation>eine von {n} Farben, die sich die Stelle teilen</translation>
  </message>
  <message>
   <source>all of the place</source>
   <translation>die ganze Stelle</translation>
  </message>
  <message>
   <source>"{text}" is no mix; write it as 2 : 3 or as 40 % : 60 %</source>
   <translation>„{text}“ ist keine Mischung; als 2 : 3 oder als 40 % : 60 % schreiben</translation>
  </message>
  <message>
   <source>has parts and percentages; write all of them alike</source>
   <translation>hat Teile und Prozente; alle gleich schreiben</translation>
  </message>
  <message>
   <source>add up to {sum:g} %; percentages of a mix make {whole} %</source>
   <translation>ergeben {sum:g} %; Prozente einer Mischung machen {whole} %</translation>
  </message>
  <message>
   <source>harden a little of it on scrap before you trust it</source>
   <translation>erst ein wenig davon auf Abfall härten lassen</translation>
  </message>
  <message>
   <source>try whether it still grips on scrap</source>
   <translation>auf Abfall probieren, ob er noch hält</translation>
  </message>
  <message>
   <source>soak one that you can spare first; old film breaks up</source>
   <translation>zuerst eines einweichen, das entbehrlich ist; alter Trägerfilm zerfällt</translation>
  </message>
  <message>
   <source>stir it to the bottom, strain it, and try it on scrap first</source>
   <translation>bis zum Grund aufrühren, sieben und zuerst auf Abfall probieren</translation>
  </message>
  <message>
   <source>opened 1 year ago: {look}</source>
   <translation>vor 1 Jahr geöffnet: {look}</translation>
  </message>
  <message>
   <source>opened {years} years ago: {look}</source>
   <translation>vor {years} Jahren geöffnet: {look}</translation>
  </message>
  <message>
   <source>little is lost in a brush</source>
   <translation>im Pinsel geht wenig verloren</translation>
  </message>
  <message>
   <source>what is wiped or dabbed off is lost</source>
   <translation>was abgewischt oder abgetupft wird, ist verloren</translation>
  </message>
  <message>
   <source>small targets catch 20 to 50 %, R. Joseph 2009</source>
   <translation>kleine Ziele fangen 20 bis 50 %, R. Joseph 2009</translation>
  </message>
  <message>
   <source>air-atomised spray, 40 CFR 60.313; span assumed</source>
   <translation>luftzerstäubtes Spritzen, 40 CFR 60.313; Spanne angenommen</translation>
  </message>
  <message>
   <source>given for this airbrush</source>
   <translation>für diese Airbrush angegeben</translation>
  </message>
  <message>
   <source>{name} lies with the other side up; turn it first</source>
   <translation>{name} liegt mit der anderen Seite nach oben; zuerst wenden</translation>
  </message>
  <message>
   <source>{place} is still masked; unmask it first</source>
   <translation>{place} ist noch maskiert; zuerst die Maskierung abnehmen</translation>
  </message>
  <message>
   <source>{place} is painted; scrape it, for glue needs a bare face</source>
   <translation>{place} ist bemalt; blank schaben, denn Kleber braucht eine blanke Fläche</translation>
  </message>
  <message>
   <source>takes {takes} min, but at up to {warm:g} °C "{coating}" can be used for {life} min; make two steps of it, or lay it where it is cooler</source>
   <translation>dauert {takes} min, aber bei bis zu {warm:g} °C ist „{coating}“ nur {life} min zu gebrauchen; zwei Schritte daraus machen oder es kühler auftragen</translation>
  </message>
  <message>
   <source>needs {needed} drying places, but {location} has {drying_places}</source>
   <translation>braucht {needed} Trockenplätze, aber {location} hat {drying_places}</translation>
  </message>
  <message>
   <source>{proof}; still open: {why}</source>
   <translation>{proof}; noch offen: {why}</translation>
  </message>
  <message>
   <source>no way to share the passes out does with less</source>
   <translation>keine Verteilung der Schichten kommt mit weniger aus</translation>
  </message>
  <message>
   <source>cannot hold together: {what}</source>
   <translation>können nicht zusammen gelten: {what}</translation>
  </message>
  <message>
   <source>{model}: the air is unfit for {step}: {reason}</source>
   <translation>{model}: die Luft taugt nicht für {step}: {reason}</translation>
  </message>
  <message>
   <source>warm or dry the air, or tick “in any air” on the step</source>
   <translation>die Luft wärmen oder trocknen, oder den Schritt „in jeder Luft“ ankreuzen</translation>
  </message>
  <message>
   <source>{model}: {step} never dries far enough in this air</source>
   <translation>{model}: {step} trocknet in dieser Luft nie weit genug</translation>
  </message>
  <message>
   <source>warm or dry the air, or let it dry elsewhere</source>
   <translation>die Luft erwärmen oder trocknen, oder es anderswo trocknen lassen</translation>
  </message>
  <message>
   <source>{model}: {step}: {why}</source>
   <translation>{model}: {step}: {why}</translation>
  </message>
  <message>
   <source>change the order of the steps</source>
   <translation>die Reihenfolge der Schritte ändern</translation>
  </message>
  <message>
   <source>{pilot} goes first in {project}</source>
   <translation>{pilot} kommt in {project} zuerst</translation>
  </message>
  <message>
   <source>let the other models begin before it is finished</source>
   <translation>die anderen Modelle beginnen lassen, bevor es fertig ist</translation>
  </message>
  <message>
   <source>{project} does not begin before {begins}</source>
   <translation>{project} beginnt nicht vor {begins}</translation>
  </message>
  <message>
   <source>let it begin earlier</source>
   <translation>es früher beginnen lassen</translation>
  </message>
  <message>
   <source>{model}: {step}</source>
   <translation>{model}: {step}</translation>
  </message>
  <message>
   <source>{model}: {step} (coat {coat})</source>
   <translation>{model}: {step} (Schicht {coat})</translation>
  </message>
  <message>
   <source>{what} is wished for {on}</source>
   <translation>{what} ist für {on} gewünscht</translation>
  </message>
  <message>
   <source>{what} is wished no earlier than {not_before:%Y-%m-%d %H:%M}</source>
   <translation>{what} ist nicht vor {not_before:%Y-%m-%d %H:%M} gewünscht</translation>
  </message>
  <message>
   <source>{what} is wished in one session with {beside}</source>
   <translation>{what} ist in einer Sitzung mit {beside} gewünscht</translation>
  </message>
  <message>
   <source>{what} is wished for {start:%Y-%m-%d %H:%M} to {end:%H:%M}</source>
   <translation>{what} ist für {start:%Y-%m-%d %H:%M} bis {end:%H:%M} gewünscht</translation>
  </message>
  <message>
   <source>move or drop this wish</source>
   <translation>diesen Wunsch verschieben oder fallen lassen</translation>
  </message>
  <message>
   <source>{model}: {step} within the window after {after}</source>
   <translation>{model}: {step} innerhalb des Fensters nach {after}</translation>
  </message>
  <message>
   <source>widen the window, or do less before it</source>
   <translation>das Fenster weiten oder davor weniger tun</translation>
  </message>
  <message>
   <source>{model}: {step} is marked {words}</source>
   <translation>{model}: {step} ist gekennzeichnet: {words}</translation>
  </message>
  <message>
   <source>take the mark off</source>
   <translation>das Kennzeichen wegnehmen</translation>
  </message>
  <message>
   <source>{model}: {step} needs two people</source>
   <translation>{model}: {step} braucht zwei Leute</translation>
  </message>
  <message>
   <source>do it alone, or ask a helper in</source>
   <translation>es allein tun oder jemanden zum Helfen holen</translation>
  </message>
  <message>
   <source>quiet hours</source>
   <translation>Ruhezeiten</translation>
  </message>
  <message>
   <source>do it earlier, or allow noise and smell for once</source>
   <translation>früher machen oder Lärm und Geruch ausnahmsweise zulassen</translation>
  </message>
  <message>
   <source>daylight hours</source>
   <translation>Tageslichtstunden</translation>
  </message>
  <message>
   <source>work by lamp, or on another day</source>
   <translation>bei Lampenlicht arbeiten oder an einem anderen Tag</translation>
  </message>
  <message>
   <source>no bench time on {days}</source>
   <translation>keine Bastelzeit am {days}</translation>
  </message>
  <message>
   <source>find an hour on one of these days</source>
   <translation>an einem dieser Tage eine Stunde finden</translation>
  </message>
  <message>
   <source>the bench time there is</source>
   <translation>die Bastelzeit, die es gibt</translation>
  </message>
  <message>
   <source>add a session, or make one longer</source>
   <translation>eine Sitzung hinzufügen oder eine verlängern</translation>
  </message>
  <message>
   <source>the coats cannot be shared out over fewer sessions</source>
   <translation>die Schichten lassen sich nicht auf weniger Sitzungen verteilen</translation>
  </message>
  <message>
   <source>nothing is left to do</source>
   <translation>nichts ist mehr zu tun</translation>
  </message>
  <message>
   <source>what is left of each session takes no whole piece of the work</source>
   <translation>was von jeder Sitzung übrig bleibt, fasst kein ganzes Stück der Arbeit</translation>
  </message>
  <message>
   <source>wet films take {energy} place-minutes of {places} places in {location}</source>
   <translation>nasse Filme brauchen {energy} Platzminuten von {places} Plätzen in {location}</translation>
  </message>
  <message>
   <source>no plan places more than all</source>
   <translation>kein Plan bringt mehr als alles unter</translation>
  </message>
  <message>
   <source>nothing can be finished earlier than its waits allow</source>
   <translation>nichts kann früher fertig sein, als seine Wartezeiten es erlauben</translation>
  </message>
  <message>
   <source>sprayed minutes</source>
   <translation>gespritzte Minuten</translation>
  </message>
  <message>
   <source>minutes of work and set-up</source>
   <translation>Minuten Arbeit und Rüsten</translation>
  </message>
  <message>
   <source>{total} {what} from {at:%a %d %b} on fill the bench time</source>
   <translation>{total} {what} füllen ab {at:%a %d %b} die Bastelzeit</translation>
  </message>
  <message>
   <source>{model}: {step} cannot be earlier</source>
   <translation>{model}: {step} kann nicht früher sein</translation>
  </message>
  <message>
   <source>{model}: {step} ends a chain of {steps} passes; its longest wait is {hours} h {minutes:02d} min after {earlier}</source>
   <translation>{model}: {step} endet eine Kette von {steps} Schichten; ihre längste Wartezeit ist {hours} h {minutes:02d} min nach {earlier}</translation>
  </message>
  <message>
   <source>{coats} coats are left; up to {most} a proof is tried</source>
   <translation>{coats} Schichten sind noch zu tun; bis {most} wird ein Beweis versucht</translation>
  </message>
  <message>
   <source>the minute within the last session</source>
   <translation>die Minute in der letzten Sitzung</translation>
  </message>
  <message>
   <source>fewer sessions might do, but no such plan was found</source>
   <translation>vielleicht reichen weniger Sitzungen, doch kein solcher Plan fand sich</translation>
  </message>
  <message>
   <source>the proof used up the work that it may take</source>
   <translation>der Beweis hat den Aufwand verbraucht, der ihm zusteht</translation>
  </message>
  <message>
   <source>no way to share the passes out is over before</source>
   <translation>keine Verteilung der Schichten ist früher zu Ende</translation>
  </message>
  <message>
   <source>filling the airbrush</source>
   <translation>dem Füllen der Airbrush</translation>
  </message>
  <message>
   <source>changing the colour</source>
   <translation>dem Farbwechsel</translation>
  </message>
  <message>
   <source>cleaning the airbrush</source>
   <translation>dem Reinigen der Airbrush</translation>
  </message>
  <message>
   <source>preparing a film</source>
   <translation>dem Vorbereiten eines Films</translation>
  </message>
  <message>
   <source>nothing holds it back</source>
   <translation>nichts hält es auf</translation>
  </message>
  <message>
   <source>drying: the model is {state}{when}</source>
   <translation>trocknet: Das Modell ist{when} {state}</translation>
  </message>
  <message>
   <source>its window after what goes before opens{when}</source>
   <translation>sein Fenster nach dem Vorigen öffnet{when}</translation>
  </message>
  <message>
   <source>no bench time before{when}, set-up included</source>
   <translation>keine Bastelzeit vor{when}, Rüsten eingerechnet</translation>
  </message>
  <message>
   <source>hands are busy until{when}</source>
   <translation>Hände sind beschäftigt bis{when}</translation>
  </message>
  <message>
   <source>the airbrush is ready not before{when}</source>
   <translation>die Airbrush ist nicht vor{when} bereit</translation>
  </message>
  <message>
   <source>quiet hours until{when}</source>
   <translation>Ruhezeit bis{when}</translation>
  </message>
  <message>
   <source>daylight for the spray can begins{when}</source>
   <translation>Tageslicht für die Sprühdose beginnt{when}</translation>
  </message>
  <message>
   <source>the air is unfit for it until{when}</source>
   <translation>die Luft taugt nicht dafür bis{when}</translation>
  </message>
  <message>
   <source>no drying place is free on the bench until{when}</source>
   <translation>auf dem Tisch ist kein Trockenplatz frei bis{when}</translation>
  </message>
  <message>
   <source>pinned, not before{when}</source>
   <translation>angeheftet, nicht vor{when}</translation>
  </message>
  <message>
   <source>follows what goes before, done{when}</source>
   <translation>folgt dem Vorigen, getan{when}</translation>
  </message>
  <message>
   <source>done, as logged</source>
   <translation>getan, wie eingetragen</translation>
  </message>
  <message>
   <source>waits{when} so that the next step can follow in time</source>
   <translation>wartet{when}, damit der nächste Schritt rechtzeitig folgen kann</translation>
  </message>
  <message>
   <source>needs two people, who are there{when}</source>
   <translation>braucht zwei Leute; sie sind da ab{when}</translation>
  </message>
  <message>
   <source>quiet hours until{when}, and it smells</source>
   <translation>Ruhezeit bis{when}, und es riecht</translation>
  </message>
  <message>
   <source>it is done best{when}, after {about}</source>
   <translation>am besten{when}, nach {about}</translation>
  </message>
  <message>
   <source>drying: {about} is {state}{when}</source>
   <translation>trocknet: {about} ist{when} {state}</translation>
  </message>
  <message>
   <source>its window after {about} opens{when}</source>
   <translation>sein Fenster nach {about} öffnet{when}</translation>
  </message>
  <message>
   <source>hands are busy with {about} until{when}</source>
   <translation>Hände sind mit {about} beschäftigt bis{when}</translation>
  </message>
  <message>
   <source>no drying place is free on {about} until{when}</source>
   <translation>kein Trockenplatz frei: {about}, bis{when}</translation>
  </message>
  <message>
   <source>follows {about}, done{when}</source>
   <translation>folgt {about}, getan{when}</translation>
  </message>
  <message>
   <source>waits until{when} so that {about} can follow in time</source>
   <translation>wartet bis{when}, damit {about} rechtzeitig folgen kann</translation>
  </message>
  <message>
   <source>the airbrush</source>
   <translation>die Airbrush</translation>
  </message>
  <message>
   <source>{airbrush} is ready with {coating} not before{when}</source>
   <translation>{airbrush} ist mit {coating} nicht vor{when} bereit</translation>
  </message>
  <message>
   <source>{airbrush} is ready not before{when}</source>
   <translation>{airbrush} ist nicht vor{when} bereit</translation>
  </message>
  <message>
   <source>ready</source>
   <translation>bereit</translation>
  </message>
  <message>
   <source>{step}, coat {coat},</source>
   <translation>{step}, Schicht {coat},</translation>
  </message>
  <message>
   <source> {at:%a %H:%M}</source>
   <translation> {at:%a %H:%M}</translation>
  </message>
  <message>
   <source>waits for {step}, which has no place</source>
   <translation>wartet auf {step}, und das hat keinen Platz</translation>
  </message>
  <message>
   <source>has no place</source>
   <translation>hat keinen Platz</translation>
  </message>
  <message>
   <source>there is no more bench time; add an evening</source>
   <translation>es gibt keine Bastelzeit mehr; einen Abend hinzufügen</translation>
  </message>
  <message>
   <source>the coat of {step} never gets there in this air: {why}</source>
   <translation>die Schicht von {step} kommt bei dieser Luft nie so weit: {why}</translation>
  </message>
  <message>
   <source>the window after {step} closes before it can be done</source>
   <translation>das Fenster nach {step} schließt, bevor es getan werden kann</translation>
  </message>
  <message>
   <source>its pin leaves no room; move or remove the pin</source>
   <translation>wo es angeheftet ist, lässt keinen Platz; versetzen oder lösen</translation>
  </message>
  <message>
   <source>needs two people, and no session has a helper</source>
   <translation>braucht zwei Leute, und in keiner Sitzung ist jemand zum Helfen da</translation>
  </message>
  <message>
   <source>it smells for {minutes} minutes, and no session has room for them and {aired} more to air the room before quiet hours</source>
   <translation>es riecht {minutes} Minuten lang, und keine Sitzung fasst sie samt {aired} weiteren zum Lüften vor der Ruhezeit</translation>
  </message>
  <message>
   <source>no session is long enough for its {minutes} minutes</source>
   <translation>keine Sitzung ist lang genug für seine {minutes} Minuten</translation>
  </message>
  <message>
   <source>the air is unfit for it in all bench time: {reason}; warm or dry it, or tick “in any air” on the step</source>
   <translation>die Luft taugt in der ganzen Bastelzeit nicht dafür: {reason}; sie wärmen oder trocknen, oder den Schritt „in jeder Luft“ ankreuzen</translation>
  </message>
  <message>
   <source>no moment suits both: {one}; {other}</source>
   <translation>kein Augenblick passt zu beidem: {one}; {other}</translation>
  </message>
  <message>
   <source>sequence</source>
   <translation>Ablauf</translation>
  </message>
  <message>
   <source>{steps} of "{name}" is in the logbook, and "{sequence}" has no such step; take it out of the logbook first, or leave this model</source>
   <translation>{steps} von „{name}“ steht im Logbuch, und „{sequence}“ hat keinen solchen Schritt; zuerst aus dem Logbuch nehmen oder dieses Modell belassen</translation>
  </message>
  <message>
   <source>nothing of "{sequence}" fits "{model}"; choose another</source>
   <translation>nichts von „{sequence}“ passt zu „{model}“; einen anderen wählen</translation>
  </message>
  <message>
   <source>colour</source>
   <translation>Farbe</translation>
  </message>
  <message>
   <source>"{colour}" has no coating yet; choose one</source>
   <translation>„{colour}“ hat noch kein Mittel; eines wählen</translation>
  </message>
  <message>
   <source>"{model}" follows no sequence; give it one, or save its own</source>
   <translation>„{model}“ folgt keinem Ablauf; ihm einen geben oder seinen eigenen sichern</translation>
  </message>
  <message>
   <source>{steps} of "{name}" is in the logbook and cannot be undone; leave this model as it is</source>
   <translation>{steps} von „{name}“ steht im Logbuch und lässt sich nicht ungeschehen machen; dieses Modell lassen, wie es ist</translation>
  </message>
  <message>
   <source>chipping fluid lies below its colours already</source>
   <translation>unter seinen Farben liegt schon Chipping-Flüssigkeit</translation>
  </message>
  <message>
   <source>it lays no base colour through which one could rub</source>
   <translation>es hat keine Grundfarbe, durch die man reiben könnte</translation>
  </message>
  <message>
   <source>tape lies among the colours over it, and would lift them</source>
   <translation>zwischen den Farben darüber liegt Klebeband und würde sie abheben</translation>
  </message>
  <message>
   <source>Gloss clear that holds the chips down under tape</source>
   <translation>Glänzender Klarlack, der die Abplatzer unter Klebeband festhält</translation>
  </message>
  <message>
   <source>Chipping fluid, thin</source>
   <translation>Chipping-Flüssigkeit, dünn</translation>
  </message>
  <message>
   <source>Wet the colour, rub chips through it, rinse off leftover fluid</source>
   <translation>Farbe anfeuchten, Abplatzer hindurchreiben, Flüssigkeitsreste abspülen</translation>
  </message>
  <message>
   <source>nothing of it is chipped</source>
   <translation>nichts daran ist abgeplatzt</translation>
  </message>
  <message>
   <source>Undercoat that chips will show</source>
   <translation>Unterfarbe, die die Abplatzer zeigen werden</translation>
  </message>
  <message>
   <source>option</source>
   <translation>Option</translation>
  </message>
  <message>
   <source>{some} and {last} exclude each other ({choice}); choose one</source>
   <translation>{some} und {last} schließen einander aus ({choice}); eines wählen</translation>
  </message>
  <message>
   <source>does not come from "{sequence}"</source>
   <translation>stammt nicht aus „{sequence}“</translation>
  </message>
  <message>
   <source>it has been changed so already</source>
   <translation>es ist schon so geändert</translation>
  </message>
  <message>
   <source>it has decals already</source>
   <translation>es hat schon Abziehbilder</translation>
  </message>
  <message>
   <source>Gloss clear where decals will lie</source>
   <translation>Glänzender Klarlack, wo Abziehbilder liegen werden</translation>
  </message>
  <message>
   <source>Matte clear over the decals</source>
   <translation>Matter Klarlack über die Abziehbilder</translation>
  </message>
  <message>
   <source>it has no decals</source>
   <translation>es hat keine Abziehbilder</translation>
  </message>
  <message>
   <source>nothing of it is washed</source>
   <translation>nichts daran bekommt ein Washing</translation>
  </message>
  <message>
   <source>it has the further colour already</source>
   <translation>es hat die weitere Farbe schon</translation>
  </message>
  <message>
   <source>it lays no colour that another could follow</source>
   <translation>es hat keine Farbe, der eine weitere folgen könnte</translation>
  </message>
  <message>
   <source>One colour more</source>
   <translation>Eine Farbe mehr</translation>
  </message>
  <message>
   <source>nothing of it is sprayed</source>
   <translation>nichts daran wird gesprüht</translation>
  </message>
  <message>
   <source>nothing of it that is brushed could be sprayed</source>
   <translation>nichts, was daran gepinselt wird, ließe sich sprühen</translation>
  </message>
  <message>
   <source>it names no coatings from a can</source>
   <translation>es nennt keine Farben aus der Dose</translation>
  </message>
  <message>
   <source>nothing would be left of it</source>
   <translation>es bliebe nichts davon übrig</translation>
  </message>
  <message>
   <source>nothing of "{model}" is in the logbook yet</source>
   <translation>von „{model}“ steht noch nichts im Logbuch</translation>
  </message>
  <message>
   <source>no wheels, tracks or tools of it are places of another part</source>
   <translation>keine Räder, Ketten oder Werkzeuge daran sind Stellen eines anderen Teils</translation>
  </message>
  <message>
   <source>no wheels, tracks or tools of it are parts of their own</source>
   <translation>keine Räder, Ketten oder Werkzeuge daran sind eigene Teile</translation>
  </message>
  <message>
   <source>"{part}" is held or made otherwise; it stays apart</source>
   <translation>„{part}“ wird anders gehalten oder ist aus anderem Stoff; es bleibt getrennt</translation>
  </message>
  <message>
   <source>"{model}" has no steps yet that could be saved</source>
   <translation>„{model}“ hat noch keine Schritte, die sich speichern ließen</translation>
  </message>
  <message>
   <source>{step}: {parts}</source>
   <translation>{step}: {parts}</translation>
  </message>
  <message>
   <source>&amp;People at the bench</source>
   <translation>&amp;Personen am Tisch</translation>
  </message>
  <message>
   <source>&amp;On</source>
   <translation>A&amp;m</translation>
  </message>
  <message>
   <source>&amp;Beginning on</source>
   <translation>Be&amp;ginnend am</translation>
  </message>
  <message>
   <source>&amp;From</source>
   <translation>&amp;Von</translation>
  </message>
  <message>
   <source>Until the next day if not later</source>
   <translation>Bis zum nächsten Tag, wenn nicht später</translation>
  </message>
  <message>
   <source>&amp;Until</source>
   <translation>&amp;Bis</translation>
  </message>
  <message>
   <source>"{rule}" is not a recurrence rule; write it as FREQ=WEEKLY;BYDAY=TU,TH</source>
   <translation>„{rule}“ ist keine Wiederholungsregel; als FREQ=WEEKLY;BYDAY=TU,TH schreiben</translation>
  </message>
  <message>
   <source>must repeat by DAILY, WEEKLY, MONTHLY or YEARLY</source>
   <translation>muss sich nach DAILY, WEEKLY, MONTHLY oder YEARLY wiederholen</translation>
  </message>
  <message>
   <source>must not hold {field}; start and end say the hours</source>
   <translation>darf {field} nicht enthalten; Anfang und Ende nennen die Stunden</translation>
  </message>
  <message>
   <source>"{rule}" is not a recurrence rule ({problem})</source>
   <translation>„{rule}“ ist keine Wiederholungsregel ({problem})</translation>
  </message>
  <message>
   <source>"{rule}" never names a day</source>
   <translation>„{rule}“ nennt nie einen Tag</translation>
  </message>
  <message>
   <source>{field} is "{value}", but must be a number from 1 to 9999</source>
   <translation>{field} ist „{value}“, muss aber eine Zahl von 1 bis 9999 sein</translation>
  </message>
  <message>
   <source>must not hold both COUNT and UNTIL</source>
   <translation>darf nicht COUNT und UNTIL zugleich enthalten</translation>
  </message>
  <message>
   <source>BYDAY "{day}" names a day that does not come</source>
   <translation>BYDAY „{day}“ nennt einen Tag, der nicht kommt</translation>
  </message>
  <message>
   <source>min of bench time</source>
   <translation>min Bastelzeit</translation>
  </message>
  <message>
   <source>"{mix}" is a coating; rename one</source>
   <translation>„{mix}“ ist ein Mittel; eines umbenennen</translation>
  </message>
  <message>
   <source>is a thinner; put the coating that forms the film first</source>
   <translation>ist eine Verdünnung; das filmbildende Mittel zuerst nennen</translation>
  </message>
  <message>
   <source>has more than {most} cards; throw old ones away</source>
   <translation>hat mehr als {most} Karten; alte wegwerfen</translation>
  </message>
  <message>
   <source>is a thinner and forms no film; name a coating or a mix</source>
   <translation>ist eine Verdünnung und bildet keinen Film; ein Mittel oder eine Mischung nennen</translation>
  </message>
  <message>
   <source>location</source>
   <translation>Ort</translation>
  </message>
  <message>
   <source>is an airbrush, but gear.airbrushes is empty; add one or use a brush</source>
   <translation>ist eine Airbrush, aber keine ist da; eine hinzufügen oder den Pinsel nehmen</translation>
  </message>
  <message>
   <source>"{name}" gets a coat from applications[{get}] as well; make a step of each</source>
   <translation>„{name}“ bekommt auch von applications[{get}] eine Schicht; aus jedem einen Schritt machen</translation>
  </message>
  <message>
   <source>takes {takes} min, but "{coating}" can be used for {life} min; make two steps of it, or mix less at a time</source>
   <translation>dauert {takes} min, aber „{coating}“ ist {life} min brauchbar; zwei Schritte daraus machen oder weniger auf einmal mischen</translation>
  </message>
  <message>
   <source>step "{after}" lays no film that could be {mark}; give minutes</source>
   <translation>Schritt „{after}“ trägt keinen Film auf, der {mark} sein könnte; Minuten angeben</translation>
  </message>
  <message>
   <source>a join needs at least two parts</source>
   <translation>zum Zusammenkleben gehören mindestens zwei Teile</translation>
  </message>
  <message>
   <source>model</source>
   <translation>Modell</translation>
  </message>
  <message>
   <source>"{swatch}" is not a colour; write it as #c8b482</source>
   <translation>„{swatch}“ ist keine Farbe; als #c8b482 schreiben</translation>
  </message>
  <message>
   <source>is a fraction of the volume; give 0.01 to 1</source>
   <translation>ist ein Anteil am Volumen; 0,01 bis 1 angeben</translation>
  </message>
  <message>
   <source>give either "state" or "minutes", not both and not neither</source>
   <translation>entweder einen Zustand oder Minuten angeben, nicht beides und nicht keines</translation>
  </message>
  <message>
   <source>goes with "minutes" only</source>
   <translation>geht nur mit Minuten</translation>
  </message>
  <message>
   <source>goes with a preparation other than none, and such a preparation takes minutes</source>
   <translation>gehört zu einer Vorbereitung, und eine Vorbereitung braucht Minuten</translation>
  </message>
  <message>
   <source>a coat cannot melt into a film that was prepared; use two windows</source>
   <translation>eine Schicht kann nicht in einen vorbereiteten Film schmelzen; zwei Fenster nehmen</translation>
  </message>
  <message>
   <source>must lie after opens</source>
   <translation>muss nach dem Öffnen liegen</translation>
  </message>
  <message>
   <source>only the last may stay open</source>
   <translation>nur das letzte darf offen bleiben</translation>
  </message>
  <message>
   <source>only the first may open at once</source>
   <translation>nur das erste darf sofort öffnen</translation>
  </message>
  <message>
   <source>lies before the window ahead of it has closed; order them</source>
   <translation>liegt vor dem Schließen des Fensters davor; sie ordnen</translation>
  </message>
  <message>
   <source>is empty; write where it stands, as "label"</source>
   <translation>ist leer; schreiben, wo es steht, etwa „Etikett“</translation>
  </message>
  <message>
   <source>By its kind, as “waterborne acrylic, sand”</source>
   <translation>Nach seiner Art, etwa „wasserverdünnbares Acryl, sand“</translation>
  </message>
  <message>
   <source>&amp;Name</source>
   <translation>&amp;Name</translation>
  </message>
  <message>
   <source>&amp;Family</source>
   <translation>&amp;Familie</translation>
  </message>
  <message>
   <source>F&amp;inish</source>
   <translation>&amp;Glanzgrad</translation>
  </message>
  <message>
   <source>&amp;Colour</source>
   <translation>Far&amp;be</translation>
  </message>
  <message>
   <source>&amp;Solids by volume</source>
   <translation>Festkörper&amp;volumen</translation>
  </message>
  <message>
   <source>&amp;Dry film of one coat</source>
   <translation>T&amp;rockenfilm einer Schicht</translation>
  </message>
  <message>
   <source>From the &amp;label</source>
   <translation>Vom &amp;Etikett</translation>
  </message>
  <message>
   <source>&amp;Windows for the next coat</source>
   <translation>&amp;Überlackierfenster</translation>
  </message>
  <message>
   <source>&amp;Life once mixed</source>
   <translation>Top&amp;fzeit nach dem Mischen</translation>
  </message>
  <message>
   <source>Not laid &amp;below</source>
   <translation>Nicht &amp;unter</translation>
  </message>
  <message>
   <source>Not laid &amp;above</source>
   <translation>Nicht ü&amp;ber</translation>
  </message>
  <message>
   <source>% RH</source>
   <translation>% r. F.</translation>
  </message>
  <message>
   <source>Not laid in air &amp;damper than</source>
   <translation>Nicht bei &amp;feuchterer Luft als</translation>
  </message>
  <message>
   <source>&amp;Left now</source>
   <translation>&amp;Jetzt übrig</translation>
  </message>
  <message>
   <source>One &amp;bottle holds</source>
   <translation>Eine Flasche f&amp;asst</translation>
  </message>
  <message>
   <source>Count the drops that fill 1 ml once; otherwise the family's usual figure holds</source>
   <translation>Einmal die Tropfen zählen, die 1 ml füllen; sonst gilt der übliche Wert der Familie</translation>
  </message>
  <message>
   <source>&amp;Drops to a millilitre</source>
   <translation>&amp;Tropfen je Milliliter</translation>
  </message>
  <message>
   <source>&amp;Opened</source>
   <translation>Ge&amp;öffnet</translation>
  </message>
  <message>
   <source>×</source>
   <translation>×</translation>
  </message>
  <message>
   <source>Learned from looks at films, or set by hand; 1 is as stated</source>
   <translation>Aus Blicken auf Filme gelernt oder von Hand gesetzt; 1 heißt wie angegeben</translation>
  </message>
  <message>
   <source>Drying &amp;time, times as stated</source>
   <translation>Trocknungs&amp;zeit, Faktor zur Angabe</translation>
  </message>
  <message>
   <source>A metallic loses its shine under matte clear, a fluorescent wants white below</source>
   <translation>Metallic verliert unter mattem Klarlack seinen Glanz, Leuchtfarbe will Weiß darunter</translation>
  </message>
  <message>
   <source>&amp;Effect</source>
   <translation>&amp;Effekt</translation>
  </message>
  <message>
   <source>&amp;Hides what lies below</source>
   <translation>Verdec&amp;kt, was darunter liegt</translation>
  </message>
  <message>
   <source>How far its times may lie from the likely ones; else as its label or family</source>
   <translation>Wie weit seine Zeiten von den wahrscheinlichen abweichen können; sonst wie Etikett oder Familie</translation>
  </message>
  <message>
   <source>S&amp;urely, times likely</source>
   <translation>Sicher, mal &amp;wahrscheinlich</translation>
  </message>
  <message>
   <source>kJ/mol</source>
   <translation>kJ/mol</translation>
  </message>
  <message>
   <source>Added to its family's slope; about 10 for a fifth more at 10 °C</source>
   <translation>Kommt zur Steigung der Familie hinzu; etwa 10 für ein Fünftel mehr bei 10 °C</translation>
  </message>
  <message>
   <source>Steeper by te&amp;mperature</source>
   <translation>Stärker nach Te&amp;mperatur</translation>
  </message>
  <message>
   <source>Slow solvent that keeps it open; a tenth doubles every time (assumed)</source>
   <translation>Langsames Lösemittel, das die Farbe offen hält; ein Zehntel verdoppelt jede Zeit (angenommen)</translation>
  </message>
  <message>
   <source>&amp;Retarder stirred in</source>
   <translation>Eingerührter Verzö&amp;gerer</translation>
  </message>
  <message>
   <source>&amp;Trial</source>
   <translation>&amp;Probe</translation>
  </message>
  <message>
   <source>&amp;When</source>
   <translation>&amp;Wann</translation>
  </message>
  <message>
   <source>It h&amp;eld</source>
   <translation>Sie &amp;hielt</translation>
  </message>
  <message>
   <source>&amp;Bottle</source>
   <translation>&amp;Flasche</translation>
  </message>
  <message>
   <source>&amp;Coated</source>
   <translation>&amp;Lackiert</translation>
  </message>
  <message>
   <source>Dries &amp;in</source>
   <translation>Trocknet &amp;in</translation>
  </message>
  <message>
   <source>Dry &amp;film</source>
   <translation>Trocken&amp;film</translation>
  </message>
  <message>
   <source>has more than {most} trials; coat another card</source>
   <translation>hat mehr als {most} Proben; eine weitere Karte lackieren</translation>
  </message>
  <message>
   <source>must lie after the card was coated</source>
   <translation>muss nach dem Lackieren der Karte liegen</translation>
  </message>
  <message>
   <source>is longer than {most} characters; shorten it</source>
   <translation>ist länger als {most} Zeichen; kürzen</translation>
  </message>
  <message>
   <source>&amp;Load a clean cup</source>
   <translation>Sauberen Becher &amp;füllen</translation>
  </message>
  <message>
   <source>Change to the &amp;same family</source>
   <translation>Wechsel in &amp;derselben Familie</translation>
  </message>
  <message>
   <source>Change to &amp;another family</source>
   <translation>Wechsel in eine &amp;andere Familie</translation>
  </message>
  <message>
   <source>&amp;Clean before it is put away</source>
   <translation>&amp;Reinigen vor dem Weglegen</translation>
  </message>
  <message>
   <source>Longest time between two strokes before the paint dries in the nozzle</source>
   <translation>Längste Zeit zwischen zwei Strichen, bevor die Farbe in der Düse trocknet</translation>
  </message>
  <message>
   <source>A load may stand &amp;idle</source>
   <translation>Eine Füllung darf &amp;stehen</translation>
  </message>
  <message>
   <source>Least &amp;fill of the cup</source>
   <translation>&amp;Kleinste Becherfüllung</translation>
  </message>
  <message>
   <source>&amp;Most that the cup takes</source>
   <translation>Der Becher fasst &amp;höchstens</translation>
  </message>
  <message>
   <source>Lost at each change and &amp;cleaning</source>
   <translation>&amp;Verlust bei jedem Wechsel und Reinigen</translation>
  </message>
  <message>
   <source>&amp;Stays on the model</source>
   <translation>&amp;Bleibt auf dem Modell</translation>
  </message>
  <message>
   <source>is less than least_fill_ml</source>
   <translation>ist weniger als least_fill_ml</translation>
  </message>
  <message>
   <source>project</source>
   <translation>Projekt</translation>
  </message>
  <message>
   <source>part</source>
   <translation>Teil</translation>
  </message>
  <message>
   <source>is empty; name a coating</source>
   <translation>ist leer; ein Mittel nennen</translation>
  </message>
  <message>
   <source>What forms the film first; thinners and the rest after it</source>
   <translation>Zuerst, was den Film bildet; Verdünnung und alles Übrige danach</translation>
  </message>
  <message>
   <source>&amp;Parts by volume</source>
   <translation>&amp;Teile nach Volumen</translation>
  </message>
  <message>
   <source>&amp;Can be used for</source>
   <translation>&amp;Verwendbar</translation>
  </message>
  <message>
   <source>Else that of the first</source>
   <translation>Sonst die des ersten</translation>
  </message>
  <message>
   <source>Co&amp;lour</source>
   <translation>Far&amp;be</translation>
  </message>
  <message>
   <source>is empty; name at least one coating</source>
   <translation>ist leer; mindestens ein Mittel nennen</translation>
  </message>
  <message>
   <source>mm</source>
   <translation>mm</translation>
  </message>
  <message>
   <source>cm²</source>
   <translation>cm²</translation>
  </message>
  <message>
   <source>is empty; give at least one, such as "all over"</source>
   <translation>ist leer; mindestens eine angeben, etwa „rundum“</translation>
  </message>
  <message>
   <source>m</source>
   <translation>m</translation>
  </message>
  <message>
   <source>is empty; give at least one</source>
   <translation>ist leer; mindestens eines angeben</translation>
  </message>
  <message>
   <source>is longer than 20 characters; write it as 1:72</source>
   <translation>ist länger als 20 Zeichen; als 1:72 schreiben</translation>
  </message>
  <message>
   <source>has no time zone; write an offset such as +01:00</source>
   <translation>hat keine Zeitzone; einen Versatz wie +01:00 schreiben</translation>
  </message>
  <message>
   <source>no time zone is called "{name}"; use an IANA name such as Europe/Warsaw</source>
   <translation>keine Zeitzone heißt „{name}“; einen IANA-Namen wie Europe/Warsaw nehmen</translation>
  </message>
  <message>
   <source>"{text}" is not a time; write it as 19:30</source>
   <translation>„{text}“ ist keine Uhrzeit; als 19:30 schreiben</translation>
  </message>
  <message>
   <source>"{text}" is not a whole local minute; write it as 19:30</source>
   <translation>„{text}“ ist keine ganze örtliche Minute; als 19:30 schreiben</translation>
  </message>
  <message>
   <source>is not a whole minute; drop seconds</source>
   <translation>ist keine ganze Minute; Sekunden weglassen</translation>
  </message>
  <message>
   <source>lies outside the years 1971 to 2199</source>
   <translation>liegt außerhalb der Jahre 1971 bis 2199</translation>
  </message>
  <message>
   <source>is more than 20 years from today; check the year</source>
   <translation>liegt mehr als 20 Jahre von heute; Jahreszahl prüfen</translation>
  </message>
  <message>
   <source>{what} is dated {day}, more than 20 years after now; check the year</source>
   <translation>{what} trägt das Datum {day}, mehr als 20 Jahre nach jetzt; Jahreszahl prüfen</translation>
  </message>
  <message>
   <source>give one of "on", "start" and "end", "not_before", "beside"</source>
   <translation>eines davon angeben: „on“, „start“ und „end“, „not_before“, „beside“</translation>
  </message>
  <message>
   <source>names another step of the project, as "model/step"</source>
   <translation>nennt einen anderen Schritt des Projekts als „Modell/Schritt“</translation>
  </message>
  <message>
   <source>give both "start" and "end"</source>
   <translation>„start“ und „end“ angeben</translation>
  </message>
  <message>
   <source>is empty; put at least one on the table</source>
   <translation>ist leer; mindestens eines auf den Tisch stellen</translation>
  </message>
  <message>
   <source>{value:g} is outside {low:g} to {high:g}</source>
   <translation>{value:g} liegt nicht zwischen {low:g} und {high:g}</translation>
  </message>
  <message>
   <source>{value:g} {unit} is outside {low:g} to {high:g} {unit}</source>
   <translation>{value:g} {unit} liegt nicht zwischen {low:g} und {high:g} {unit}</translation>
  </message>
  <message>
   <source>is empty; give it a name</source>
   <translation>ist leer; einen Namen geben</translation>
  </message>
  <message>
   <source>starts or ends with a blank; remove it</source>
   <translation>beginnt oder endet mit einem Leerzeichen; entfernen</translation>
  </message>
  <message>
   <source>must not contain "/"</source>
   <translation>darf kein „/“ enthalten</translation>
  </message>
  <message>
   <source>contains a control character; remove it</source>
   <translation>enthält ein Steuerzeichen; entfernen</translation>
  </message>
  <message>
   <source>"{name}" occurs twice; rename one</source>
   <translation>„{name}“ kommt zweimal vor; eines umbenennen</translation>
  </message>
  <message>
   <source>no {kind} is called "{name}"</source>
   <translation>unbekannt: {kind} „{name}“</translation>
  </message>
  <message>
   <source>no {kind} is called "{name}"; did you mean "{near}"?</source>
   <translation>unbekannt: {kind} „{name}“; ist „{near}“ gemeint?</translation>
  </message>
  <message>
   <source>How many parts may dry there at once; a part says how many it takes</source>
   <translation>Wie viele Teile dort zugleich trocknen dürfen; ein Teil sagt, wie viele Plätze es braucht</translation>
  </message>
  <message>
   <source>&amp;Drying places</source>
   <translation>&amp;Trockenplätze</translation>
  </message>
  <message>
   <source>&amp;Points of the day</source>
   <translation>&amp;Punkte des Tages</translation>
  </message>
  <message>
   <source>&amp;Out of doors: spray cans are used in this air</source>
   <translation>&amp;Im Freien: in dieser Luft wird mit Sprühdosen gearbeitet</translation>
  </message>
  <message>
   <source>A fan carries water and fast solvents off; it hardens nothing</source>
   <translation>Ein Lüfter trägt Wasser und schnelle Lösemittel fort; härten lässt er nichts</translation>
  </message>
  <message>
   <source>&amp;Moving air</source>
   <translation>&amp;Bewegte Luft</translation>
  </message>
  <message>
   <source>Coats are s&amp;prayed here, wherever they dry</source>
   <translation>Hier wird ges&amp;prüht, wo auch immer es trocknet</translation>
  </message>
  <message>
   <source>has a hole; give at least one point</source>
   <translation>hat eine Lücke; mindestens einen Punkt angeben</translation>
  </message>
  <message>
   <source>is not in order of time; sort its points</source>
   <translation>ist nicht nach der Zeit geordnet; die Punkte sortieren</translation>
  </message>
  <message>
   <source>m³</source>
   <translation>m³</translation>
  </message>
  <message>
   <source>is empty; describe the bench at least</source>
   <translation>ist leer; wenigstens den Basteltisch beschreiben</translation>
  </message>
  <message>
   <source>holds more than one place out of doors; keep one</source>
   <translation>enthält mehr als einen Ort im Freien; einen behalten</translation>
  </message>
  <message>
   <source>holds more than one place to spray in; keep one</source>
   <translation>hat mehr als einen Ort zum Sprühen; einen behalten</translation>
  </message>
  <message>
   <source>Offered first; each model may take another coating or mix</source>
   <translation>Wird zuerst angeboten; jedes Modell kann ein anderes Mittel oder eine andere Mischung bekommen</translation>
  </message>
  <message>
   <source>&amp;Usually</source>
   <translation>&amp;Üblich</translation>
  </message>
  <message>
   <source>N&amp;ote</source>
   <translation>N&amp;otiz</translation>
  </message>
  <message>
   <source>&amp;Usual</source>
   <translation>&amp;Üblich</translation>
  </message>
  <message>
   <source>Options of the same choice exclude each other; one of them is always taken</source>
   <translation>Optionen derselben Auswahl schließen einander aus; eine von ihnen gilt immer</translation>
  </message>
  <message>
   <source>&amp;Choice</source>
   <translation>&amp;Auswahl</translation>
  </message>
  <message>
   <source>must be more than 0 cm²</source>
   <translation>muss mehr als 0 cm² sein</translation>
  </message>
  <message>
   <source>Painted area; on a larger model each part takes longer, on a smaller less</source>
   <translation>Bemalte Fläche; an einem größeren Modell dauert jedes Teil länger, an einem kleineren kürzer</translation>
  </message>
  <message>
   <source>&amp;Minutes are written for</source>
   <translation>&amp;Minuten gelten für</translation>
  </message>
  <message>
   <source>"{name}" is no earlier step of the sequence</source>
   <translation>„{name}“ ist kein früherer Schritt des Ablaufs</translation>
  </message>
  <message>
   <source>&amp;Places</source>
   <translation>St&amp;ellen</translation>
  </message>
  <message>
   <source>C&amp;oats</source>
   <translation>S&amp;chichten</translation>
  </message>
  <message>
   <source>is empty; name what gets the coat</source>
   <translation>ist leer; nennen, was die Schicht bekommt</translation>
  </message>
  <message>
   <source>is empty; name a coating or mix</source>
   <translation>ist leer; ein Mittel oder eine Mischung nennen</translation>
  </message>
  <message>
   <source>Fixed &amp;minutes</source>
   <translation>Feste &amp;Minuten</translation>
  </message>
  <message>
   <source>and for each &amp;part</source>
   <translation>und je &amp;Teil</translation>
  </message>
  <message>
   <source>and for each change of &amp;colour within it</source>
   <translation>und je &amp;Farbwechsel darin</translation>
  </message>
  <message>
   <source>no work takes 0 minutes; give fixed or per_part</source>
   <translation>keine Arbeit dauert 0 Minuten; feste Minuten oder Minuten je Teil angeben</translation>
  </message>
  <message>
   <source>is empty; name an earlier step</source>
   <translation>ist leer; einen früheren Schritt nennen</translation>
  </message>
  <message>
   <source>"{id}" is not a step id; use lower-case letters, digits and "-"</source>
   <translation>„{id}“ ist kein Kurzname eines Schritts; Kleinbuchstaben, Ziffern und „-“ verwenden</translation>
  </message>
  <message>
   <source>&amp;Tool</source>
   <translation>&amp;Werkzeug</translation>
  </message>
  <message>
   <source>Shortest p&amp;iece</source>
   <translation>&amp;Kürzestes Stück</translation>
  </message>
  <message>
   <source>&amp;Marks</source>
   <translation>Mer&amp;kmale</translation>
  </message>
  <message>
   <source>&amp;Look after it</source>
   <translation>Nac&amp;hsehen nach</translation>
  </message>
  <message>
   <source>touches nothing; give applications or touches</source>
   <translation>berührt nichts; Aufträge oder berührte Stellen angeben</translation>
  </message>
  <message>
   <source>{stage} lays no film; move its places to touches</source>
   <translation>{stage} trägt keinen Film auf; die Stellen nur als berührt angeben</translation>
  </message>
  <message>
   <source>an airbrush holds one coating at a time; make a step of each</source>
   <translation>eine Airbrush fasst ein Mittel auf einmal; aus jedem einen Schritt machen</translation>
  </message>
  <message>
   <source>names the location of dries_in again</source>
   <translation>nennt den Trockenort noch einmal</translation>
  </message>
  <message>
   <source>goes with applications</source>
   <translation>gehört zu Aufträgen</translation>
  </message>
  <message>
   <source>belongs to varnish and matte steps</source>
   <translation>gehört zu Klarlack- und Mattlackschritten</translation>
  </message>
  <message>
   <source>a sprayed coat is laid in one go; it cannot be split</source>
   <translation>eine gespritzte Schicht wird in einem Zug aufgetragen; sie lässt sich nicht teilen</translation>
  </message>
  <message>
   <source>a step with a closing gate cannot be split (definition 17)</source>
   <translation>ein Schritt mit einer schließenden Bedingung lässt sich nicht teilen</translation>
  </message>
  <message>
   <source>belongs to join steps</source>
   <translation>gehört zu Klebeschritten</translation>
  </message>
  <message>
   <source>only a step of one coat can have to end by a closing; make a step of each coat</source>
   <translation>nur ein Schritt mit einer Schicht kann bis zum Schließen enden müssen; aus jeder Schicht einen Schritt machen</translation>
  </message>
  <message>
   <source>Counted &amp;in</source>
   <translation>&amp;Gezählt in</translation>
  </message>
  <message>
   <source>Used &amp;up by one coat or piece of work</source>
   <translation>&amp;Verbraucht je Schicht oder Arbeit</translation>
  </message>
  <message>
   <source>&amp;At these stages</source>
   <translation>&amp;Bei diesen Arbeitsschritten</translation>
  </message>
  <message>
   <source>&amp;How much</source>
   <translation>Wie &amp;viel</translation>
  </message>
  <message>
   <source>&amp;Mixed on</source>
   <translation>&amp;Gemischt am</translation>
  </message>
  <message>
   <source>days</source>
   <translation>Tage</translation>
  </message>
  <message>
   <source>Keeps &amp;for</source>
   <translation>&amp;Hält</translation>
  </message>
  <message>
   <source>is empty; name what is in it</source>
   <translation>ist leer; nennen, was darin ist</translation>
  </message>
  <message>
   <source>&amp;Painted on</source>
   <translation>&amp;Bemalt am</translation>
  </message>
  <message>
   <source>&amp;Drop by drop</source>
   <translation>Tropfen für &amp;Tropfen</translation>
  </message>
  <message>
   <source>P&amp;hoto</source>
   <translation>&amp;Foto</translation>
  </message>
  <message>
   <source>is empty; say what is in it</source>
   <translation>ist leer; sagen, was darin ist</translation>
  </message>
  <message>
   <source>%</source>
   <translation>%</translation>
  </message>
  <message>
   <source>must hold each of {levels} once</source>
   <translation>muss jedes davon einmal enthalten: {levels}</translation>
  </message>
  <message>
   <source>cannot be written ({why})</source>
   <translation>kann nicht geschrieben werden ({why})</translation>
  </message>
  <message>
   <source>cannot be written ({problem})</source>
   <translation>lässt sich nicht schreiben ({problem})</translation>
  </message>
  <message>
   <source>is there already; open it, or choose another name</source>
   <translation>ist schon da; öffnen oder einen anderen Namen wählen</translation>
  </message>
  <message>
   <source>cannot be made: its folder is not there</source>
   <translation>lässt sich nicht anlegen: Der Ordner fehlt</translation>
  </message>
  <message>
   <source>is there already; choose another name for the backup</source>
   <translation>ist schon da; einen anderen Namen für die Sicherung wählen</translation>
  </message>
  <message>
   <source>cannot take back "{edit}"</source>
   <translation>„{edit}“ lässt sich nicht zurücknehmen</translation>
  </message>
  <message>
   <source>is open to be read only: {why}</source>
   <translation>ist nur zum Lesen offen: {why}</translation>
  </message>
  <message>
   <source>cannot be read ({why}); check the path</source>
   <translation>lässt sich nicht lesen ({why}); den Pfad prüfen</translation>
  </message>
  <message>
   <source>is no path; check it</source>
   <translation>ist kein Pfad; bitte prüfen</translation>
  </message>
  <message>
   <source>is a pipe or a device from which not all comes; give a file</source>
   <translation>ist eine Pipe oder ein Gerät, von dem nicht alles kommt; eine Datei angeben</translation>
  </message>
  <message>
   <source>is there already; choose another name</source>
   <translation>ist schon da; einen anderen Namen wählen</translation>
  </message>
  <message>
   <source>is no archive of Tackfree, or damaged; pack it again</source>
   <translation>ist kein Archiv von Tackfree oder beschädigt; neu packen</translation>
  </message>
  <message>
   <source>holds far more than a bench book does</source>
   <translation>enthält viel mehr als ein Werkbuch</translation>
  </message>
  <message>
   <source>holds far too large a book</source>
   <translation>enthält ein viel zu großes Buch</translation>
  </message>
  <message>
   <source>is far too large</source>
   <translation>ist viel zu groß</translation>
  </message>
  <message>
   <source>{photo} in it is not the photo of that name</source>
   <translation>{photo} darin ist nicht das Foto dieses Namens</translation>
  </message>
  <message>
   <source>upgrade to {version}</source>
   <translation>Umstellung auf {version}</translation>
  </message>
  <message>
   <source>cannot undo "{edit}"</source>
   <translation>„{edit}“ lässt sich nicht rückgängig machen</translation>
  </message>
  <message>
   <source>cannot redo "{edit}"</source>
   <translation>„{edit}“ lässt sich nicht wiederholen</translation>
  </message>
  <message>
   <source>new book</source>
   <translation>neues Buch</translation>
  </message>
  <message>
   <source>is damaged; restore a backup of it</source>
   <translation>ist beschädigt; eine Sicherung zurückspielen</translation>
  </message>
  <message>
   <source>cannot be written: the disk is full; nothing was changed</source>
   <translation>lässt sich nicht schreiben: Der Datenträger ist voll; nichts wurde geändert</translation>
  </message>
  <message>
   <source>cannot be written: the file or its folder is read-only</source>
   <translation>lässt sich nicht schreiben: Die Datei oder ihr Ordner ist schreibgeschützt</translation>
  </message>
  <message>
   <source>is being written by another program; try again</source>
   <translation>wird gerade von einem anderen Programm geschrieben; noch einmal versuchen</translation>
  </message>
  <message>
   <source>is not a bench book</source>
   <translation>ist kein Werkbuch</translation>
  </message>
  <message>
   <source>cannot be read or written: the disk reports an error</source>
   <translation>lässt sich weder lesen noch schreiben: Der Datenträger meldet einen Fehler</translation>
  </message>
  <message>
   <source>cannot be opened: look whether its folder is there and may be written</source>
   <translation>lässt sich nicht öffnen: nachsehen, ob der Ordner da und beschreibbar ist</translation>
  </message>
  <message>
   <source>cannot be opened: no permission</source>
   <translation>lässt sich nicht öffnen: keine Berechtigung</translation>
  </message>
  <message>
   <source>takes too long to read: it is damaged, or no book of one person</source>
   <translation>zu lesen dauert zu lange: beschädigt, oder kein Buch einer einzelnen Person</translation>
  </message>
  <message>
   <source>holds a text that is far too long: it is damaged</source>
   <translation>enthält einen viel zu langen Text: beschädigt</translation>
  </message>
  <message>
   <source>cannot be used ({reason})</source>
   <translation>lässt sich nicht verwenden ({reason})</translation>
  </message>
  <message>
   <source>is damaged ({words}); restore a backup of it</source>
   <translation>ist beschädigt ({words}); eine Sicherung zurückspielen</translation>
  </message>
  <message>
   <source>must be an object {"tackfree": 1, ...}; this is no exchange file</source>
   <translation>muss ein Objekt {"tackfree": 1, ...} sein; dies ist keine Austauschdatei</translation>
  </message>
  <message>
   <source>is missing; an exchange file begins with {{"tackfree": {newest}}}</source>
   <translation>fehlt; eine Austauschdatei beginnt mit {{"tackfree": {newest}}}</translation>
  </message>
  <message>
   <source>is version {tackfree}, made by a newer Tackfree; this one reads up to version {newest}, so update it first</source>
   <translation>ist Version {tackfree} eines neueren Tackfree; dieses liest bis Version {newest}, also zuerst aktualisieren</translation>
  </message>
  <message>
   <source>is no version there has been; use {newest}</source>
   <translation>ist keine Version, die es gab; {newest} nehmen</translation>
  </message>
  <message>
   <source>is not there</source>
   <translation>ist nicht da</translation>
  </message>
  <message>
   <source>is a folder, not a bench book</source>
   <translation>ist ein Ordner, kein Werkbuch</translation>
  </message>
  <message>
   <source>is a pipe or a device, not a bench book</source>
   <translation>ist eine Pipe oder ein Gerät, kein Werkbuch</translation>
  </message>
  <message>
   <source>is empty</source>
   <translation>ist leer</translation>
  </message>
  <message>
   <source>is another program's database, not a bench book</source>
   <translation>ist die Datenbank eines anderen Programms, kein Werkbuch</translation>
  </message>
  <message>
   <source>lies beside the book and belongs to another; move it away ({why})</source>
   <translation>liegt neben dem Buch und gehört zu einem anderen; weglegen ({why})</translation>
  </message>
  <message>
   <source>is another file now: something was laid in its place; save yours elsewhere</source>
   <translation>ist jetzt eine andere Datei: etwas wurde an ihre Stelle gelegt; das eigene Buch anderswo speichern</translation>
  </message>
  <message>
   <source>was moved to {where}; open it there</source>
   <translation>wurde nach {where} verschoben; dort öffnen</translation>
  </message>
  <message>
   <source>is gone: deleted, moved, or its disk is off; save yours elsewhere</source>
   <translation>ist weg: gelöscht, verschoben oder der Datenträger fehlt; das eigene Buch anderswo speichern</translation>
  </message>
  <message>
   <source>is damaged: it does not say its version; restore a backup</source>
   <translation>ist beschädigt: Die Version fehlt; eine Sicherung zurückspielen</translation>
  </message>
  <message>
   <source>was written by a newer Tackfree (version {version}; this one knows {newest}); update the program first</source>
   <translation>wurde von einem neueren Tackfree geschrieben (Version {version}; dieses kennt {newest}); zuerst das Programm aktualisieren</translation>
  </message>
  <message>
   <source>it holds {what}, which no Tackfree wrote</source>
   <translation>darin ist {what}, was kein Tackfree geschrieben hat</translation>
  </message>
  <message>
   <source>its tables are not those of Tackfree: {name}</source>
   <translation>seine Tabellen sind nicht die von Tackfree: {name}</translation>
  </message>
  <message>
   <source>its file, folder or disk may not be written</source>
   <translation>Datei, Ordner oder Datenträger sind schreibgeschützt</translation>
  </message>
  <message>
   <source>it cannot be brought up to date here: {problem}</source>
   <translation>es lässt sich hier nicht umstellen: {problem}</translation>
  </message>
  <message>
   <source>is larger than 100 MB; make it smaller</source>
   <translation>ist größer als 100 MB; verkleinern</translation>
  </message>
  <message>
   <source>is no image; give a JPEG, PNG, WebP, HEIC, TIFF, GIF or BMP</source>
   <translation>ist kein Bild; JPEG, PNG, WebP, HEIC, TIFF, GIF oder BMP nehmen</translation>
  </message>
  <message>
   <source>"{name}" is no kept photo</source>
   <translation>„{name}“ ist kein aufgehobenes Foto</translation>
  </message>
  <message>
   <source>the photo cannot be kept there ({why})</source>
   <translation>das Foto lässt sich dort nicht ablegen ({why})</translation>
  </message>
  <message>
   <source>must begin at start</source>
   <translation>muss am Anfang beginnen</translation>
  </message>
  <message>
   <source>must finish at end</source>
   <translation>muss am Ende aufhören</translation>
  </message>
  <message>
   <source>must be an object {"now": ..., "placements": [...]}; this is no plan</source>
   <translation>muss ein Objekt {"now": ..., "placements": [...]} sein; dies ist kein Plan</translation>
  </message>
  <message>
   <source>is no project file, or damaged; write it again</source>
   <translation>ist keine Projektdatei oder beschädigt; neu schreiben</translation>
  </message>
  <message>
   <source>holds far more files than a project does</source>
   <translation>enthält weit mehr Dateien als ein Projekt</translation>
  </message>
  <message>
   <source>holds far more than a project does</source>
   <translation>enthält weit mehr als ein Projekt</translation>
  </message>
  <message>
   <source>does not belong in a project file</source>
   <translation>gehört nicht in eine Projektdatei</translation>
  </message>
  <message>
   <source>is in it twice</source>
   <translation>ist zweimal darin</translation>
  </message>
  <message>
   <source>is locked with a password</source>
   <translation>ist mit einem Kennwort verschlossen</translation>
  </message>
  <message>
   <source>unpacks to far more than it says; it is not read</source>
   <translation>entpackt sich zu weit mehr, als es angibt; es wird nicht gelesen</translation>
  </message>
  <message>
   <source>holds no project.json; this is no project file</source>
   <translation>enthält kein project.json; dies ist keine Projektdatei</translation>
  </message>
  <message>
   <source>is not the photo of that name</source>
   <translation>ist nicht das Foto dieses Namens</translation>
  </message>
  <message>
   <source>restore {file}</source>
   <translation>{file} zurückholen</translation>
  </message>
  <message>
   <source>it holds something else than was written to it</source>
   <translation>darin steht etwas anderes, als geschrieben wurde</translation>
  </message>
  <message>
   <source>was set back to an older state; save yours elsewhere</source>
   <translation>wurde auf einen älteren Stand zurückgesetzt; das eigene Buch anderswo speichern</translation>
  </message>
  <message>
   <source>is another book now, laid in its place; save yours elsewhere</source>
   <translation>ist jetzt ein anderes Buch, das an seine Stelle gelegt wurde; das eigene anderswo speichern</translation>
  </message>
  <message>
   <source>is there twice</source>
   <translation>ist doppelt da</translation>
  </message>
  <message>
   <source>a date such as 2031-05-31</source>
   <translation>ein Datum wie 2031-05-31</translation>
  </message>
  <message>
   <source>a time with its zone, such as 2031-05-31T19:30:00+02:00</source>
   <translation>eine Zeit mit Zone, etwa 2031-05-31T19:30:00+02:00</translation>
  </message>
  <message>
   <source>is larger than {most} MB; split it into several projects</source>
   <translation>ist größer als {most} MB; in mehrere Projekte teilen</translation>
  </message>
  <message>
   <source>is not UTF-8 text (byte {start}); save it as UTF-8</source>
   <translation>ist kein UTF-8-Text (Byte {start}); als UTF-8 speichern</translation>
  </message>
  <message>
   <source>is empty; it must hold a JSON object</source>
   <translation>ist leer; es muss ein JSON-Objekt enthalten</translation>
  </message>
  <message>
   <source>is not JSON ({msg})</source>
   <translation>ist kein JSON ({msg})</translation>
  </message>
  <message>
   <source>is nested too deeply; it must be flatter</source>
   <translation>ist zu tief verschachtelt; es muss flacher sein</translation>
  </message>
  <message>
   <source>is given twice; remove one</source>
   <translation>ist zweimal angegeben; eines entfernen</translation>
  </message>
  <message>
   <source>is not a finite number of sensible size</source>
   <translation>ist keine endliche Zahl sinnvoller Größe</translation>
  </message>
  <message>
   <source>is {found}, but must be {wanted}</source>
   <translation>ist {found}, muss aber {wanted} sein</translation>
  </message>
  <message>
   <source>has more than {most} entries</source>
   <translation>hat mehr als {most} Einträge</translation>
  </message>
  <message>
   <source>field</source>
   <translation>Feld</translation>
  </message>
  <message>
   <source>is missing; it must be {wanted}</source>
   <translation>fehlt; es muss {wanted} sein</translation>
  </message>
  <message>
   <source>is longer than {most} characters</source>
   <translation>ist länger als {most} Zeichen</translation>
  </message>
  <message>
   <source>holds half a character or a zero byte; remove it</source>
   <translation>enthält ein halbes Zeichen oder ein Nullbyte; entfernen</translation>
  </message>
  <message>
   <source>"{raw}" is not {words}</source>
   <translation>„{raw}“ ist nicht {words}</translation>
  </message>
  <message>
   <source>{sentence}; use one of: {words}</source>
   <translation>{sentence}; eines davon nehmen: {words}</translation>
  </message>
  <message>
   <source>text</source>
   <translation>Text</translation>
  </message>
  <message>
   <source>the number {number}</source>
   <translation>die Zahl {number}</translation>
  </message>
  <message>
   <source>a list</source>
   <translation>eine Liste</translation>
  </message>
  <message>
   <source>an object</source>
   <translation>ein Objekt</translation>
  </message>
  <message>
   <source>a whole number</source>
   <translation>eine ganze Zahl</translation>
  </message>
  <message>
   <source>a number</source>
   <translation>eine Zahl</translation>
  </message>
  <message>
   <source>a whole number of {unit}</source>
   <translation>eine ganze Zahl in {unit}</translation>
  </message>
  <message>
   <source>a number of {unit}</source>
   <translation>eine Zahl in {unit}</translation>
  </message>
  <message>
   <source>true or false</source>
   <translation>true oder false</translation>
  </message>
  <message>
   <source>an object {...}</source>
   <translation>ein Objekt {...}</translation>
  </message>
  <message>
   <source>a list [...]</source>
   <translation>eine Liste [...]</translation>
  </message>
  <message>
   <source>{trouble}: work of its project was logged since; take those facts back first</source>
   <translation>{trouble}: Arbeit dieses Projekts steht seither im Logbuch; diese Einträge zuerst zurücknehmen</translation>
  </message>
  <message>
   <source>{trouble}: {problem}; take back what was logged since</source>
   <translation>{trouble}: {problem}; zurücknehmen, was seither im Logbuch steht</translation>
  </message>
  <message>
   <source>has no date; give it one</source>
   <translation>hat kein Datum; gib ihm eines</translation>
  </message>
  <message>
   <source>{measure}: {buys}; costs {cost}</source>
   <translation>{measure}: {buys}; kostet {cost}</translation>
  </message>
  <message>
   <source>{days:.1f} days on average</source>
   <translation>{days:.1f} Tage im Mittel</translation>
  </message>
  <message>
   <source>{days:.1f} days on average, {percent:+d} % chance of the date</source>
   <translation>{days:.1f} Tage im Mittel, {percent:+d} % Aussicht auf den Termin</translation>
  </message>
  <message>
   <source>  {project}: {before} % before, {after} % after</source>
   <translation>  {project}: vorher {before} %, danach {after} %</translation>
  </message>
  <message>
   <source>{name}: too late to keep the date in four runs of five</source>
   <translation>{name}: zu spät, um den Termin in vier von fünf Läufen zu halten</translation>
  </message>
  <message>
   <source>{name}: begin on {day} at the latest to keep the date in four runs of five</source>
   <translation>{name}: spätestens am {day} beginnen, um den Termin in vier von fünf Läufen zu halten</translation>
  </message>
  <message>
   <source>nothing of it is taken: no film dried there in that time</source>
   <translation>nichts davon wird übernommen: in dieser Zeit trocknete dort kein Film</translation>
  </message>
  <message>
   <source>air of {where}, from a logger</source>
   <translation>Luft von {where}, von einem Logger</translation>
  </message>
  <message>
   <source>holds no air of any hour</source>
   <translation>enthält zu keiner Stunde Luftwerte</translation>
  </message>
  <message>
   <source>is all there is; a line for each moment must follow</source>
   <translation>ist alles; für jeden Zeitpunkt muss eine Zeile folgen</translation>
  </message>
  <message>
   <source>lies more than {most} years from the others; check the year</source>
   <translation>liegt mehr als {most} Jahre von den anderen entfernt; Jahr prüfen</translation>
  </message>
  <message>
   <source>names no columns for time, temperature and humidity; begin with a line such as time;temperature;humidity</source>
   <translation>nennt keine Spalten für Zeit, Temperatur und Feuchte; mit einer Zeile wie Zeit;Temperatur;Feuchte beginnen</translation>
  </message>
  <message>
   <source>“{text}” is no time; write it as 2031-03-05 19:30 or 05.03.2031 19:30</source>
   <translation>„{text}“ ist keine Zeit; als 2031-03-05 19:30 oder 05.03.2031 19:30 schreiben</translation>
  </message>
  <message>
   <source>is empty; write a time</source>
   <translation>ist leer; eine Zeit schreiben</translation>
  </message>
  <message>
   <source>has no such hour of a half day</source>
   <translation>hat keine solche Stunde eines halben Tages</translation>
  </message>
  <message>
   <source>has no such hour or minute</source>
   <translation>hat keine solche Stunde oder Minute</translation>
  </message>
  <message>
   <source>has the day first, line {line} the month</source>
   <translation>hat den Tag zuerst, Zeile {line} den Monat</translation>
  </message>
  <message>
   <source>may begin with the day or the month; say which</source>
   <translation>kann mit dem Tag oder dem Monat beginnen; angeben, womit</translation>
  </message>
  <message>
   <source>names a day that is in no calendar</source>
   <translation>nennt einen Tag, der in keinem Kalender steht</translation>
  </message>
  <message>
   <source>is of the year {year}; check it</source>
   <translation>ist aus dem Jahr {year}; prüfen</translation>
  </message>
  <message>
   <source>is in the hour that the clocks leave out; does the logger keep winter time all year?</source>
   <translation>liegt in der Stunde, die die Uhren auslassen; hält der Logger das ganze Jahr Winterzeit?</translation>
  </message>
  <message>
   <source>has no such offset</source>
   <translation>hat keinen solchen Abstand von UTC</translation>
  </message>
  <message>
   <source>is {celsius:.1f} °C, no air of a room</source>
   <translation>sind {celsius:.1f} °C, keine Luft eines Raums</translation>
  </message>
  <message>
   <source>is {celsius:.1f} °C, no air of a room; is it °F?</source>
   <translation>sind {celsius:.1f} °C, keine Luft eines Raums; sind es °F?</translation>
  </message>
  <message>
   <source>is no relative humidity; it lies between 0 and 100 %</source>
   <translation>ist keine relative Feuchte; sie liegt zwischen 0 und 100 %</translation>
  </message>
  <message>
   <source>"{text}" is not two numbers; type temperature and humidity, as 21.5 48</source>
   <translation>„{text}“ sind nicht zwei Zahlen; Temperatur und Feuchte eintippen, etwa 21.5 48</translation>
  </message>
  <message>
   <source>choose at least one model</source>
   <translation>mindestens ein Modell wählen</translation>
  </message>
  <message>
   <source>lies ahead of now; what is to come is planned, not noted</source>
   <translation>liegt in der Zukunft; was kommt, wird geplant und nicht notiert</translation>
  </message>
  <message>
   <source>all of it is in the logbook already</source>
   <translation>all das steht schon im Logbuch</translation>
  </message>
  <message>
   <source>{n} models</source>
   <translation>{n} Modelle</translation>
  </message>
  <message>
   <source>{whom}: {reached}</source>
   <translation>{whom}: {reached}</translation>
  </message>
  <message>
   <source>left out</source>
   <translation>ausgelassen</translation>
  </message>
  <message>
   <source>{reason} (with {others})</source>
   <translation>{reason} (mit {others})</translation>
  </message>
  <message>
   <source>skipped: {work}</source>
   <translation>ausgelassen: {work}</translation>
  </message>
  <message>
   <source>"{step}" coat {coat} has laid no film yet</source>
   <translation>„{step}“, Schicht {coat}, hat noch keinen Film hinterlassen</translation>
  </message>
  <message>
   <source>lies before the film was laid</source>
   <translation>liegt vor dem Auftrag des Films</translation>
  </message>
  <message>
   <source>{state}: {work}</source>
   <translation>{state}: {work}</translation>
  </message>
  <message>
   <source>not {state} yet: {work}</source>
   <translation>noch nicht {state}: {work}</translation>
  </message>
  <message>
   <source>not {state} yet</source>
   <translation>noch nicht {state}</translation>
  </message>
  <message>
   <source>{word} ({places})</source>
   <translation>{word} ({places})</translation>
  </message>
  <message>
   <source>{word}: {work}</source>
   <translation>{word}: {work}</translation>
  </message>
  <message>
   <source>ran out: {bottle}</source>
   <translation>leer: {bottle}</translation>
  </message>
  <message>
   <source>leftover mix {name}: {ml:g} ml, made {made:%Y-%m-%d}</source>
   <translation>Mischungsrest {name}: {ml:g} ml, gemischt {made:%Y-%m-%d}</translation>
  </message>
  <message>
   <source>buy {bottle} ({bottle_ml:g} ml a bottle)</source>
   <translation>{bottle} kaufen ({bottle_ml:g} ml je Flasche)</translation>
  </message>
  <message>
   <source>is no bench time; there is nothing to stop</source>
   <translation>ist keine Bastelzeit; es gibt nichts abzubrechen</translation>
  </message>
  <message>
   <source>stopped for tonight</source>
   <translation>für heute aufgehört</translation>
  </message>
  <message>
   <source>evening lost: {on}</source>
   <translation>Abend verloren: {on}</translation>
  </message>
  <message>
   <source>is empty; write something</source>
   <translation>ist leer; etwas schreiben</translation>
  </message>
  <message>
   <source>note: {work}</source>
   <translation>Notiz: {work}</translation>
  </message>
  <message>
   <source>looked at, as it should be</source>
   <translation>angesehen, wie es sein soll</translation>
  </message>
  <message>
   <source>looked at: {work}</source>
   <translation>angesehen: {work}</translation>
  </message>
  <message>
   <source>{step} coat {coat}, {model}</source>
   <translation>{step} Schicht {coat}, {model}</translation>
  </message>
  <message>
   <source>Planned {day} at {time}</source>
   <translation>Geplant {day} um {time}</translation>
  </message>
  <message>
   <source>Bench sheet</source>
   <translation>Arbeitsblatt</translation>
  </message>
  <message>
   <source>Take care</source>
   <translation>Vorsicht</translation>
  </message>
  <message>
   <source>Drying now</source>
   <translation>Trocknet jetzt</translation>
  </message>
  <message>
   <source>Left to dry</source>
   <translation>Bleibt zum Trocknen</translation>
  </message>
  <message>
   <source>Closing</source>
   <translation>Schließt</translation>
  </message>
  <message>
   <source>Have a look</source>
   <translation>Nachsehen</translation>
  </message>
  <message>
   <source>Marks</source>
   <translation>Kennzeichen</translation>
  </message>
  <message>
   <source>{model}, {work}</source>
   <translation>{model}, {work}</translation>
  </message>
  <message>
   <source>{work}, coat {coat}</source>
   <translation>{work}, Schicht {coat}</translation>
  </message>
  <message>
   <source>{work} (piece {piece} of {pieces})</source>
   <translation>{work} (Stück {piece} von {pieces})</translation>
  </message>
  <message>
   <source>{work} (logged)</source>
   <translation>{work} (eingetragen)</translation>
  </message>
  <message>
   <source>parts {mix}</source>
   <translation>Teile {mix}</translation>
  </message>
  <message>
   <source>was not drawn in {seconds} s; try again</source>
   <translation>wurde in {seconds} s nicht gezeichnet; noch einmal versuchen</translation>
  </message>
  <message>
   <source>it ended with status {number}</source>
   <translation>es endete mit Status {number}</translation>
  </message>
  <message>
   <source>cannot be drawn: {last}; the README names the libraries that Qt needs</source>
   <translation>lässt sich nicht zeichnen: {last}; die README nennt die Bibliotheken, die Qt braucht</translation>
  </message>
  <message>
   <source>add bench time</source>
   <translation>Bastelzeit hinzufügen</translation>
  </message>
  <message>
   <source>add quiet hours</source>
   <translation>Ruhezeiten hinzufügen</translation>
  </message>
  <message>
   <source>add daylight hours</source>
   <translation>Tageslichtstunden hinzufügen</translation>
  </message>
  <message>
   <source>change bench time</source>
   <translation>Bastelzeit ändern</translation>
  </message>
  <message>
   <source>change quiet hours</source>
   <translation>Ruhezeiten ändern</translation>
  </message>
  <message>
   <source>change daylight hours</source>
   <translation>Tageslichtstunden ändern</translation>
  </message>
  <message>
   <source>remove bench time</source>
   <translation>Bastelzeit entfernen</translation>
  </message>
  <message>
   <source>remove quiet hours</source>
   <translation>Ruhezeiten entfernen</translation>
  </message>
  <message>
   <source>remove daylight hours</source>
   <translation>Tageslichtstunden entfernen</translation>
  </message>
  <message>
   <source>names no day; choose at least one</source>
   <translation>nennt keinen Tag; mindestens einen wählen</translation>
  </message>
  <message>
   <source>away on {day}</source>
   <translation>fort am {day}</translation>
  </message>
  <message>
   <source>away {first} to {last}</source>
   <translation>fort {first} bis {last}</translation>
  </message>
  <message>
   <source>back on {day}</source>
   <translation>wieder da am {day}</translation>
  </message>
  <message>
   <source>back {first} to {last}</source>
   <translation>wieder da {first} bis {last}</translation>
  </message>
  <message>
   <source>extra bench time {start:%Y-%m-%d %H:%M}–{end:%H:%M}</source>
   <translation>zusätzliche Bastelzeit {start:%Y-%m-%d %H:%M}–{end:%H:%M}</translation>
  </message>
  <message>
   <source>lies before the first day; swap the two</source>
   <translation>liegt vor dem ersten Tag; beide tauschen</translation>
  </message>
  <message>
   <source>makes {count} days; {most} at a time are the most</source>
   <translation>sind {count} Tage; höchstens {most} auf einmal</translation>
  </message>
  <message>
   <source>these hours are not there any more; look again</source>
   <translation>diese Stunden gibt es nicht mehr; noch einmal hinsehen</translation>
  </message>
  <message>
   <source>made by itself</source>
   <translation>von selbst angelegt</translation>
  </message>
  <message>
   <source>asked for</source>
   <translation>verlangt</translation>
  </message>
  <message>
   <source>before an upgrade</source>
   <translation>vor einer Umstellung</translation>
  </message>
  <message>
   <source>before something was restored</source>
   <translation>vor einem Wiederherstellen</translation>
  </message>
  <message>
   <source>Open the copy of {day}</source>
   <translation>Die Kopie von {day} öffnen</translation>
  </message>
  <message>
   <source>Open the copy of {day} (1 edit fewer)</source>
   <translation>Die Kopie von {day} öffnen (1 Änderung weniger)</translation>
  </message>
  <message>
   <source>Open the copy of {day} ({n} edits fewer)</source>
   <translation>Die Kopie von {day} öffnen ({n} Änderungen weniger)</translation>
  </message>
  <message>
   <source>Of the damaged book can still be read: {projects} projects, {models} models, {entries} entries of the logbook, {coatings} coatings</source>
   <translation>Vom beschädigten Buch ist noch lesbar: {projects} Projekte, {models} Modelle, {entries} Logbucheinträge, {coatings} Farben</translation>
  </message>
  <message>
   <source>{said}; lost: {lost}</source>
   <translation>{said}; verloren: {lost}</translation>
  </message>
  <message>
   <source>of an older version</source>
   <translation>von einer älteren Version</translation>
  </message>
  <message>
   <source>projects: {projects}, models: {models}, entries of the logbook: {entries}</source>
   <translation>Projekte: {projects}, Modelle: {models}, Einträge im Logbuch: {entries}</translation>
  </message>
  <message>
   <source>another book</source>
   <translation>ein anderes Buch</translation>
  </message>
  <message>
   <source>the same as now</source>
   <translation>gleich wie jetzt</translation>
  </message>
  <message>
   <source>without “{edit}”</source>
   <translation>ohne „{edit}“</translation>
  </message>
  <message>
   <source>{n} edits fewer, from “{edit}” on</source>
   <translation>{n} Änderungen weniger, ab „{edit}“</translation>
  </message>
  <message>
   <source>{fewer} edits fewer, {more} of its own</source>
   <translation>{fewer} Änderungen weniger, {more} eigene</translation>
  </message>
  <message>
   <source>there is no bench book yet; name an exchange file, or start tackfree</source>
   <translation>es gibt noch kein Werkbuch; eine Austauschdatei nennen oder tackfree starten</translation>
  </message>
  <message>
   <source>cannot be written: the disk is full; make room, or choose another place</source>
   <translation>kann nicht geschrieben werden: die Platte ist voll; Platz schaffen oder einen anderen Ort wählen</translation>
  </message>
  <message>
   <source>cannot be written ({why}); choose another place</source>
   <translation>kann nicht geschrieben werden ({why}); einen anderen Ort wählen</translation>
  </message>
  <message>
   <source>Try the parts together, dry</source>
   <translation>Die Teile trocken anpassen</translation>
  </message>
  <message>
   <source>{model}: try the parts together first</source>
   <translation>{model}: die Teile zuerst trocken anpassen</translation>
  </message>
  <message>
   <source>change 1 step</source>
   <translation>1 Schritt ändern</translation>
  </message>
  <message>
   <source>change {count} steps</source>
   <translation>{count} Schritte ändern</translation>
  </message>
  <message>
   <source>begin {name}</source>
   <translation>{name} beginnen</translation>
  </message>
  <message>
   <source>{project}: add {model}</source>
   <translation>{project}: {model} hinzufügen</translation>
  </message>
  <message>
   <source>{model} again as {names}</source>
   <translation>{model} noch einmal als {names}</translation>
  </message>
  <message>
   <source>{name} is already logged; it stays, or the project goes too</source>
   <translation>{name} ist schon im Logbuch; es bleibt, oder das Projekt geht mit</translation>
  </message>
  <message>
   <source>{project} would have no model left; remove the project instead</source>
   <translation>{project} hätte kein Modell mehr; stattdessen das Projekt entfernen</translation>
  </message>
  <message>
   <source>{project}: remove {names}</source>
   <translation>{project}: {names} entfernen</translation>
  </message>
  <message>
   <source>{model}: scale {scale}</source>
   <translation>{model}: Maßstab {scale}</translation>
  </message>
  <message>
   <source>{model}: kind</source>
   <translation>{model}: Art</translation>
  </message>
  <message>
   <source>{model}: real size</source>
   <translation>{model}: wirkliche Größe</translation>
  </message>
  <message>
   <source>{model}: finish by {target}</source>
   <translation>{model}: fertig bis {target}</translation>
  </message>
  <message>
   <source>{model}: no date of its own</source>
   <translation>{model}: kein eigenes Datum</translation>
  </message>
  <message>
   <source>{model}: weight {weight}</source>
   <translation>{model}: Gewicht {weight}</translation>
  </message>
  <message>
   <source>{model}: as early as it can be</source>
   <translation>{model}: so früh wie möglich</translation>
  </message>
  <message>
   <source>{model}: when its turn comes</source>
   <translation>{model}: wenn es an der Reihe ist</translation>
  </message>
  <message>
   <source>{project}: note</source>
   <translation>{project}: Notiz</translation>
  </message>
  <message>
   <source>{project}: not before {begins}</source>
   <translation>{project}: nicht vor {begins}</translation>
  </message>
  <message>
   <source>{project}: begins at once</source>
   <translation>{project}: beginnt sofort</translation>
  </message>
  <message>
   <source>{old} is now {new}</source>
   <translation>{old} heißt jetzt {new}</translation>
  </message>
  <message>
   <source>{model} is now {new}</source>
   <translation>{model} heißt jetzt {new}</translation>
  </message>
  <message>
   <source>{model}: {step} is now {new}</source>
   <translation>{model}: {step} heißt jetzt {new}</translation>
  </message>
  <message>
   <source>{model}: {old} is now {new}</source>
   <translation>{model}: {old} heißt jetzt {new}</translation>
  </message>
  <message>
   <source>{model}: {part}/{old} is now {part}/{new}</source>
   <translation>{model}: {part}/{old} heißt jetzt {part}/{new}</translation>
  </message>
  <message>
   <source>{model}: move {moved}</source>
   <translation>{model}: {moved} verschieben</translation>
  </message>
  <message>
   <source>{project}: move {moved}</source>
   <translation>{project}: {moved} verschieben</translation>
  </message>
  <message>
   <source>“{then}” must stay behind “{first}”: {why}</source>
   <translation>„{then}“ muss hinter „{first}“ bleiben: {why}</translation>
  </message>
  <message>
   <source>its gate counts from there</source>
   <translation>seine Bedingung zählt von dort</translation>
  </message>
  <message>
   <source>it waits for that</source>
   <translation>es wartet darauf</translation>
  </message>
  <message>
   <source>“{then}” has been done on these places; nothing goes under it now</source>
   <translation>„{then}“ ist auf diesen Stellen getan; darunter kommt nichts mehr</translation>
  </message>
  <message>
   <source>“{step}” could not be done there: {why}</source>
   <translation>„{step}“ ginge dort nicht: {why}</translation>
  </message>
  <message>
   <source>{model}: add {part}</source>
   <translation>{model}: {part} hinzufügen</translation>
  </message>
  <message>
   <source>{model}: change {part}</source>
   <translation>{model}: {part} ändern</translation>
  </message>
  <message>
   <source>{model}: add {part}/{place}</source>
   <translation>{model}: {part}/{place} hinzufügen</translation>
  </message>
  <message>
   <source>{model}: change {part}/{place}</source>
   <translation>{model}: {part}/{place} ändern</translation>
  </message>
  <message>
   <source>{model} would have no part left; remove the model instead</source>
   <translation>{model} hätte kein Teil mehr; stattdessen das Modell entfernen</translation>
  </message>
  <message>
   <source>“{name}” worked on nothing else and is already logged</source>
   <translation>„{name}“ galt nur diesem und ist schon im Logbuch</translation>
  </message>
  <message>
   <source>{model}: remove {names}</source>
   <translation>{model}: {names} entfernen</translation>
  </message>
  <message>
   <source>{part} has no place beside others that is called “{place}”</source>
   <translation>{part} hat neben anderen keine Stelle namens „{place}“</translation>
  </message>
  <message>
   <source>{model}: paint {name} apart</source>
   <translation>{model}: {name} getrennt bemalen</translation>
  </message>
  <message>
   <source>“{name}” is already logged; they were joined as parts</source>
   <translation>„{name}“ ist schon im Logbuch; sie wurden als Teile zusammengeklebt</translation>
  </message>
  <message>
   <source>{model}: glue {second} to {united} first</source>
   <translation>{model}: zuerst {second} an {united} kleben</translation>
  </message>
  <message>
   <source>Join {part}</source>
   <translation>{part} ankleben</translation>
  </message>
  <message>
   <source>{model} has no place called “{name}”</source>
   <translation>{model} hat keine Stelle namens „{name}“</translation>
  </message>
  <message>
   <source>{model}: add {step}</source>
   <translation>{model}: {step} hinzufügen</translation>
  </message>
  <message>
   <source>{model}: change {step}</source>
   <translation>{model}: {step} ändern</translation>
  </message>
  <message>
   <source>“{name}” of {model} is already logged, so it stays</source>
   <translation>„{name}“ von {model} ist schon im Logbuch und bleibt</translation>
  </message>
  <message>
   <source>“{step}” is already logged; it can no longer be split</source>
   <translation>„{step}“ ist schon im Logbuch; er lässt sich nicht mehr teilen</translation>
  </message>
  <message>
   <source>choose some of the step's places, not all and not none</source>
   <translation>einige Stellen des Schritts wählen, nicht alle und nicht keine</translation>
  </message>
  <message>
   <source>{model}: split {step}</source>
   <translation>{model}: {step} teilen</translation>
  </message>
  <message>
   <source>copy {steps} to {names}</source>
   <translation>{steps} nach {names} kopieren</translation>
  </message>
  <message>
   <source>“{step}” has a gate that counts from “{after}”, which {target} lacks; copy both</source>
   <translation>„{step}“ hat eine Bedingung, die von „{after}“ zählt, und das fehlt {target}; beide kopieren</translation>
  </message>
  <message>
   <source>{target} has none of the places of “{step}” ({wanted})</source>
   <translation>{target} hat keine der Stellen von „{step}“ ({wanted})</translation>
  </message>
  <message>
   <source>remove {listed}</source>
   <translation>{listed} entfernen</translation>
  </message>
  <message>
   <source>remove {ids} of {model}</source>
   <translation>{ids} von {model} entfernen</translation>
  </message>
  <message>
   <source>{ids} of {model}</source>
   <translation>{ids} von {model}</translation>
  </message>
  <message>
   <source>time</source>
   <translation>Zeit</translation>
  </message>
  <message>
   <source>work</source>
   <translation>Arbeit</translation>
  </message>
  <message>
   <source>laid</source>
   <translation>aufgetragen</translation>
  </message>
  <message>
   <source>minutes</source>
   <translation>Minuten</translation>
  </message>
  <message>
   <source>air</source>
   <translation>Luft</translation>
  </message>
  <message>
   <source>used</source>
   <translation>verbraucht</translation>
  </message>
  <message>
   <source>note</source>
   <translation>Notiz</translation>
  </message>
  <message>
   <source>Build record as of {day} {time}.</source>
   <translation>Baubericht, Stand {day} {time}.</translation>
  </message>
  <message>
   <source>Nothing has been logged yet.</source>
   <translation>Noch steht nichts im Logbuch.</translation>
  </message>
  <message>
   <source>Build record</source>
   <translation>Baubericht</translation>
  </message>
  <message>
   <source>The project</source>
   <translation>Das Projekt</translation>
  </message>
  <message>
   <source>what</source>
   <translation>was</translation>
  </message>
  <message>
   <source>how it was</source>
   <translation>wie es war</translation>
  </message>
  <message>
   <source>What was done</source>
   <translation>Was getan wurde</translation>
  </message>
  <message>
   <source>What to do differently</source>
   <translation>Was anders zu machen ist</translation>
  </message>
  <message>
   <source>Nothing was noted.</source>
   <translation>Nichts wurde notiert.</translation>
  </message>
  <message>
   <source>{model}: {done} of {n} steps done</source>
   <translation>{model}: {done} von {n} Schritten erledigt</translation>
  </message>
  <message>
   <source>models</source>
   <translation>Modelle</translation>
  </message>
  <message>
   <source>begun</source>
   <translation>begonnen</translation>
  </message>
  <message>
   <source>last work</source>
   <translation>letzte Arbeit</translation>
  </message>
  <message>
   <source>date to keep</source>
   <translation>Termin</translation>
  </message>
  <message>
   <source>{hours} on 1 day</source>
   <translation>{hours} an 1 Tag</translation>
  </message>
  <message>
   <source>{hours} on {n} days</source>
   <translation>{hours} an {n} Tagen</translation>
  </message>
  <message>
   <source>of it</source>
   <translation>davon</translation>
  </message>
  <message>
   <source>reckoned</source>
   <translation>gerechnet</translation>
  </message>
  <message>
   <source>1 entry from start to end</source>
   <translation>1 Eintrag von Anfang bis Ende</translation>
  </message>
  <message>
   <source>{n} entries from start to end</source>
   <translation>{n} Einträge von Anfang bis Ende</translation>
  </message>
  <message>
   <source>1 coat or piece of work, {left} not logged</source>
   <translation>1 Schicht oder Arbeit, {left} nicht eingetragen</translation>
  </message>
  <message>
   <source>{n} coats and pieces of work, {left} not logged</source>
   <translation>{n} Schichten und Arbeiten, {left} nicht eingetragen</translation>
  </message>
  <message>
   <source>done</source>
   <translation>getan</translation>
  </message>
  <message>
   <source>{day}, {hours} of work</source>
   <translation>{day}, {hours} Arbeit</translation>
  </message>
  <message>
   <source>Work of {day}</source>
   <translation>Arbeit vom {day}</translation>
  </message>
  <message>
   <source>{model}, {work}, {day}</source>
   <translation>{model}, {work}, {day}</translation>
  </message>
  <message>
   <source>under way</source>
   <translation>im Gang</translation>
  </message>
  <message>
   <source>{minutes} (planned {planned})</source>
   <translation>{minutes} (geplant {planned})</translation>
  </message>
  <message>
   <source>{c:g} °C</source>
   <translation>{c:g} °C</translation>
  </message>
  <message>
   <source>{rh:g} % RH</source>
   <translation>{rh:g} % r. F.</translation>
  </message>
  <message>
   <source>{ml:g} ml {coating}</source>
   <translation>{ml:g} ml {coating}</translation>
  </message>
  <message>
   <source>mix {mix}</source>
   <translation>Mischung {mix}</translation>
  </message>
  <message>
   <source>{ml:g} ml</source>
   <translation>{ml:g} ml</translation>
  </message>
  <message>
   <source>coating or mix</source>
   <translation>Mittel oder Mischung</translation>
  </message>
  <message>
   <source>what it is</source>
   <translation>was es ist</translation>
  </message>
  <message>
   <source>coats</source>
   <translation>Schichten</translation>
  </message>
  <message>
   <source>Coats and mixes</source>
   <translation>Schichten und Mischungen</translation>
  </message>
  <message>
   <source>As they were used</source>
   <translation>Wie sie verwendet wurden</translation>
  </message>
  <message>
   <source>yes</source>
   <translation>ja</translation>
  </message>
  <message>
   <source>not yet</source>
   <translation>noch nicht</translation>
  </message>
  <message>
   <source>Looks at films</source>
   <translation>Blicke auf Filme</translation>
  </message>
  <message>
   <source>when</source>
   <translation>wann</translation>
  </message>
  <message>
   <source>film</source>
   <translation>Film</translation>
  </message>
  <message>
   <source>state</source>
   <translation>Zustand</translation>
  </message>
  <message>
   <source>reached</source>
   <translation>erreicht</translation>
  </message>
  <message>
   <source>How far films had come</source>
   <translation>Wie weit Filme waren</translation>
  </message>
  <message>
   <source>Diary</source>
   <translation>Tagebuch</translation>
  </message>
  <message>
   <source>about</source>
   <translation>worüber</translation>
  </message>
  <message>
   <source>in words</source>
   <translation>in Worten</translation>
  </message>
  <message>
   <source>What happened</source>
   <translation>Was geschah</translation>
  </message>
  <message>
   <source>{model}, {work} took {minutes} min where {planned} were planned</source>
   <translation>{model}, {work}: {minutes} min statt geplanter {planned}</translation>
  </message>
  <message>
   <source>Photo {photo} is missing from {folder}.</source>
   <translation>Foto {photo} fehlt in {folder}.</translation>
  </message>
  <message>
   <source>Photo {photo} is of a kind that a page cannot show.</source>
   <translation>Foto {photo} ist von einer Art, die eine Seite nicht zeigen kann.</translation>
  </message>
  <message>
   <source>Photo {photo} {problem}.</source>
   <translation>Foto {photo} {problem}.</translation>
  </message>
  <message>
   <source>{stage}: {title}</source>
   <translation>{stage}: {title}</translation>
  </message>
  <message>
   <source>{coating} on {places}</source>
   <translation>{coating} auf {places}</translation>
  </message>
  <message>
   <source>{hours} h</source>
   <translation>{hours} h</translation>
  </message>
  <message>
   <source>{n} new</source>
   <translation>{n} neu</translation>
  </message>
  <message>
   <source>{n} changed</source>
   <translation>{n} geändert</translation>
  </message>
  <message>
   <source>{n} as before</source>
   <translation>{n} wie bisher</translation>
  </message>
  <message>
   <source>{n} cancelled</source>
   <translation>{n} abgesagt</translation>
  </message>
  <message>
   <source>no evenings</source>
   <translation>keine Abende</translation>
  </message>
  <message>
   <source>is too large for a calendar of evenings; choose another</source>
   <translation>ist zu groß für einen Kalender der Abende; eine andere Datei wählen</translation>
  </message>
  <message>
   <source>is no calendar that can be read; choose another name</source>
   <translation>ist kein lesbarer Kalender; einen anderen Namen wählen</translation>
  </message>
  <message>
   <source>is a calendar of another program; choose another name</source>
   <translation>ist der Kalender eines anderen Programms; einen anderen Namen wählen</translation>
  </message>
  <message>
   <source>Bench evenings</source>
   <translation>Bastelabende</translation>
  </message>
  <message>
   <source>cleaning</source>
   <translation>Reinigen</translation>
  </message>
  <message>
   <source>Bench: {work}</source>
   <translation>Basteln: {work}</translation>
  </message>
  <message>
   <source>Bench: {work} ({models})</source>
   <translation>Basteln: {work} ({models})</translation>
  </message>
  <message>
   <source>At the bench at {time}: {work}</source>
   <translation>Am Basteltisch um {time}: {work}</translation>
  </message>
  <message>
   <source>End {work} before {by}: {why}</source>
   <translation>{work} vor {by} beenden: {why}</translation>
  </message>
  <message>
   <source>Start {work} before {by}: {why}</source>
   <translation>{work} vor {by} beginnen: {why}</translation>
  </message>
  <message>
   <source>Monday</source>
   <translation>Montag</translation>
  </message>
  <message>
   <source>Tuesday</source>
   <translation>Dienstag</translation>
  </message>
  <message>
   <source>Wednesday</source>
   <translation>Mittwoch</translation>
  </message>
  <message>
   <source>Thursday</source>
   <translation>Donnerstag</translation>
  </message>
  <message>
   <source>Friday</source>
   <translation>Freitag</translation>
  </message>
  <message>
   <source>Saturday</source>
   <translation>Samstag</translation>
  </message>
  <message>
   <source>Sunday</source>
   <translation>Sonntag</translation>
  </message>
  <message>
   <source>How sure the dates are ({runs} runs of this plan):</source>
   <translation>Wie sicher die Termine sind ({runs} Läufe dieses Plans):</translation>
  </message>
  <message>
   <source>  {name}: {dates}</source>
   <translation>  {name}: {dates}</translation>
  </message>
  <message>
   <source>    {name}: {dates}</source>
   <translation>    {name}: {dates}</translation>
  </message>
  <message>
   <source>  together: {dates}</source>
   <translation>  zusammen: {dates}</translation>
  </message>
  <message>
   <source>What moves the date most:</source>
   <translation>Was den Termin am meisten verschiebt:</translation>
  </message>
  <message>
   <source>  {driver}</source>
   <translation>  {driver}</translation>
  </message>
  <message>
   <source>What holds the end most often:</source>
   <translation>Woran das Ende am häufigsten hängt:</translation>
  </message>
  <message>
   <source>  {step}: in {percent} % of all runs</source>
   <translation>  {step}: in {percent} % aller Läufe</translation>
  </message>
  <message>
   <source>not finished in {percent} % of all runs</source>
   <translation>in {percent} % aller Läufe nicht fertig</translation>
  </message>
  <message>
   <source>even odds by {half}, four in five by {most}, 19 in 20 by {nearly}</source>
   <translation>zur Hälfte bis {half}, vier von fünf bis {most}, 19 von 20 bis {nearly}</translation>
  </message>
  <message>
   <source>even odds by {half}, four in five by {most}, 19 in 20 by {nearly}; by {date} {percent} %</source>
   <translation>zur Hälfte bis {half}, vier von fünf bis {most}, 19 von 20 bis {nearly}; bis {date} {percent} %</translation>
  </message>
  <message>
   <source>The next session's sheet is finished in {percent} % of all runs.</source>
   <translation>Der Zettel des nächsten Abends wird in {percent} % aller Läufe fertig.</translation>
  </message>
  <message>
   <source>{what}: {days:.1f} days between a bad and a good turn</source>
   <translation>{what}: {days:.1f} Tage zwischen Pech und Glück</translation>
  </message>
  <message>
   <source>whether {day} sessions take place</source>
   <translation>ob die Sitzungen am {day} stattfinden</translation>
  </message>
  <message>
   <source>how {coating} dries</source>
   <translation>wie {coating} trocknet</translation>
  </message>
  <message>
   <source>how the room dries</source>
   <translation>wie der Raum trocknet</translation>
  </message>
  <message>
   <source>how long this takes: {stage}</source>
   <translation>wie lange dies dauert: {stage}</translation>
  </message>
  <message>
   <source>whether this has to be done over: {stage}</source>
   <translation>ob dies noch einmal gemacht werden muss: {stage}</translation>
  </message>
  <message>
   <source>how fast work goes</source>
   <translation>wie schnell die Arbeit geht</translation>
  </message>
  <message>
   <source>never</source>
   <translation>nie</translation>
  </message>
  <message>
   <source>"{text}" is not a time; write it as 2031-05-31T19:30+02:00</source>
   <translation>„{text}“ ist keine Zeit; als 2031-05-31T19:30+02:00 schreiben</translation>
  </message>
  <message>
   <source>"{text}" is skipped in {zone}, where clocks go forward then; write {next}</source>
   <translation>„{text}“ fällt in {zone} aus, weil die Uhren dann vorgestellt werden; als {next} schreiben</translation>
  </message>
  <message>
   <source>it is {clock}, but the logbook tells of {what} at {told}: planned from there on; put the clock right, or the entry</source>
   <translation>es ist {clock}, aber das Logbuch nennt {what} um {told}: ab da geplant; Uhr oder Eintrag richtigstellen</translation>
  </message>
  <message>
   <source>the clock here shows {here}, at the bench it is {there} ({zone}); all times are the bench's</source>
   <translation>die Uhr hier zeigt {here}, am Basteltisch ist es {there} ({zone}); alle Zeiten sind die des Basteltischs</translation>
  </message>
  <message>
   <source>evening closed</source>
   <translation>Abend geschlossen</translation>
  </message>
  <message>
   <source>start</source>
   <translation>Anfang</translation>
  </message>
  <message>
   <source>end</source>
   <translation>Ende</translation>
  </message>
  <message>
   <source>evening</source>
   <translation>Abend</translation>
  </message>
  <message>
   <source>kind</source>
   <translation>Art</translation>
  </message>
  <message>
   <source>coat</source>
   <translation>Schicht</translation>
  </message>
  <message>
   <source>title</source>
   <translation>Titel</translation>
  </message>
  <message>
   <source>places</source>
   <translation>Stellen</translation>
  </message>
  <message>
   <source>tool</source>
   <translation>Werkzeug</translation>
  </message>
  <message>
   <source>reason</source>
   <translation>Grund</translation>
  </message>
  <message>
   <source>planned</source>
   <translation>geplant</translation>
  </message>
  <message>
   <source>temperature_c</source>
   <translation>Temperatur_c</translation>
  </message>
  <message>
   <source>humidity_pct</source>
   <translation>Luftfeuchte_pct</translation>
  </message>
  <message>
   <source>photos</source>
   <translation>Fotos</translation>
  </message>
  <message>
   <source>airbrush</source>
   <translation>Airbrush</translation>
  </message>
  <message>
   <source>name</source>
   <translation>Name</translation>
  </message>
  <message>
   <source>needed</source>
   <translation>gebraucht</translation>
  </message>
  <message>
   <source>in_stock</source>
   <translation>vorrätig</translation>
  </message>
  <message>
   <source>buy</source>
   <translation>zu kaufen</translation>
  </message>
  <message>
   <source>unit</source>
   <translation>Einheit</translation>
  </message>
  <message>
   <source>bottles</source>
   <translation>Flaschen</translation>
  </message>
  <message>
   <source>bottle_ml</source>
   <translation>Flasche_ml</translation>
  </message>
  <message>
   <source>runs_out</source>
   <translation>geht aus am</translation>
  </message>
  <message>
   <source>runs_out_at</source>
   <translation>geht aus bei</translation>
  </message>
  <message>
   <source>at hand</source>
   <translation>bereitzulegen</translation>
  </message>
  <message>
   <source>at least: a place has no area</source>
   <translation>mindestens: Eine Stelle hat keine Fläche</translation>
  </message>
  <message>
   <source>consumable</source>
   <translation>Verbrauchsmaterial</translation>
  </message>
  <message>
   <source>logged</source>
   <translation>eingetragen</translation>
  </message>
  <message>
   <source>line {line}</source>
   <translation>Zeile {line}</translation>
  </message>
  <message>
   <source>line {line}, column "{column}"</source>
   <translation>Zeile {line}, Spalte „{column}“</translation>
  </message>
  <message>
   <source>is larger than 20 MB; give a part of it</source>
   <translation>ist größer als 20 MB; einen Teil davon geben</translation>
  </message>
  <message>
   <source>holds a zero byte; this is no text</source>
   <translation>enthält ein Nullbyte; dies ist kein Text</translation>
  </message>
  <message>
   <source>is empty; give a table with a line for each entry</source>
   <translation>ist leer; eine Tabelle mit einer Zeile je Eintrag geben</translation>
  </message>
  <message>
   <source>is there twice, as “{first}” and “{second}”; rename one</source>
   <translation>ist zweimal da, als „{first}“ und „{second}“; eine umbenennen</translation>
  </message>
  <message>
   <source>is empty; write a number</source>
   <translation>ist leer; eine Zahl schreiben</translation>
  </message>
  <message>
   <source>“{text}” is no number; write it as 12.5 or 12,5</source>
   <translation>„{text}“ ist keine Zahl; als 12.5 oder 12,5 schreiben</translation>
  </message>
  <message>
   <source>is no text; save the table as CSV in UTF-8</source>
   <translation>ist kein Text; die Tabelle als CSV in UTF-8 sichern</translation>
  </message>
  <message>
   <source>cannot be read as a table: a quotation mark stands wrong, or is open</source>
   <translation>lässt sich nicht als Tabelle lesen: ein Anführungszeichen steht falsch oder ist offen</translation>
  </message>
  <message>
   <source>is one of more than {most} lines; give a part of them</source>
   <translation>ist eine von mehr als {most} Zeilen; einen Teil davon geben</translation>
  </message>
  <message>
   <source>has far more cells than a table has</source>
   <translation>hat weit mehr Zellen als eine Tabelle</translation>
  </message>
  <message>
   <source>has a cell that is far too long; is a quotation mark open?</source>
   <translation>hat eine viel zu lange Zelle; ist ein Anführungszeichen offen?</translation>
  </message>
  <message>
   <source>{what}; there are {known}</source>
   <translation>{what}; es gibt {known}</translation>
  </message>
  <message>
   <source>demo</source>
   <translation>Beispiel</translation>
  </message>
  <message>
   <source>the folder {folder} is missing; install Tackfree again</source>
   <translation>der Ordner {folder} fehlt; Tackfree neu installieren</translation>
  </message>
  <message>
   <source>cannot be made ({why}); look at it</source>
   <translation>lässt sich nicht anlegen ({why}); bitte nachsehen</translation>
  </message>
  <message>
   <source>cannot be removed ({why}); look at it</source>
   <translation>lässt sich nicht entfernen ({why}); bitte nachsehen</translation>
  </message>
  <message>
   <source>desktop entries are for Linux and its like; here, link to the command yourself</source>
   <translation>Menüeinträge gibt es unter Linux und seinesgleichen; hier bitte selbst eine Verknüpfung zum Befehl anlegen</translation>
  </message>
  <message>
   <source>drying card: {coating}</source>
   <translation>Trockenkarte: {coating}</translation>
  </message>
  <message>
   <source>{coating} stood: {trial}</source>
   <translation>{coating} bestand: {trial}</translation>
  </message>
  <message>
   <source>{coating} did not stand yet: {trial}</source>
   <translation>{coating} bestand noch nicht: {trial}</translation>
  </message>
  <message>
   <source>drying card of {coating} thrown away</source>
   <translation>Trockenkarte von {coating} weggeworfen</translation>
  </message>
  <message>
   <source>no card was coated with "{coating}" yet; coat one first</source>
   <translation>mit „{coating}“ wurde noch keine Karte lackiert; erst eine lackieren</translation>
  </message>
  <message>
   <source>has no such card any more</source>
   <translation>hat diese Karte nicht mehr</translation>
  </message>
  <message>
   <source>air of {where}: {temperature_c:g} °C, {humidity_pct:g} %</source>
   <translation>Luft in {where}: {temperature_c:g} °C, {humidity_pct:g} %</translation>
  </message>
  <message>
   <source>reading: {temperature_c:g} °C, {humidity_pct:g} %</source>
   <translation>Messung: {temperature_c:g} °C, {humidity_pct:g} %</translation>
  </message>
  <message>
   <source>bench time</source>
   <translation>Bastelzeit</translation>
  </message>
  <message>
   <source>no bench time {start:%Y-%m-%d %H:%M}</source>
   <translation>keine Bastelzeit {start:%Y-%m-%d %H:%M}</translation>
  </message>
  <message>
   <source>{minutes} min from now</source>
   <translation>{minutes} min ab jetzt</translation>
  </message>
  <message>
   <source>{minutes} min more at the bench</source>
   <translation>{minutes} min länger am Basteltisch</translation>
  </message>
  <message>
   <source>{project}: finish by {target}</source>
   <translation>{project}: fertig bis {target}</translation>
  </message>
  <message>
   <source>{project}: no date</source>
   <translation>{project}: kein Termin</translation>
  </message>
  <message>
   <source>{project}: weight {weight}</source>
   <translation>{project}: Gewicht {weight}</translation>
  </message>
  <message>
   <source>{project}: active</source>
   <translation>{project}: aktiv</translation>
  </message>
  <message>
   <source>{project}: set aside</source>
   <translation>{project}: beiseitegelegt</translation>
  </message>
  <message>
   <source>remove {project}</source>
   <translation>{project} entfernen</translation>
  </message>
  <message>
   <source>no look can tell that; wait, or begin all the same</source>
   <translation>keine Prüfung kann das sagen; warten oder trotzdem beginnen</translation>
  </message>
  <message>
   <source>name at least one vehicle; the rest has an answer already</source>
   <translation>mindestens ein Fahrzeug nennen; alles andere hat schon eine Antwort</translation>
  </message>
  <message>
   <source>choose at least one day</source>
   <translation>mindestens einen Tag wählen</translation>
  </message>
  <message>
   <source>begin {project}</source>
   <translation>{project} beginnen</translation>
  </message>
  <message>
   <source>"{text}" are no hours; write them as 19:30-21:30 or 20-22</source>
   <translation>„{text}“ sind keine Stunden; als 19:30-21:30 oder 20-22 schreiben</translation>
  </message>
  <message>
   <source>Of {n} finished projects, {kept} kept the date of four runs in five; the dates were {loss:.1f} days off (pinball loss).</source>
   <translation>Von {n} fertigen Projekten haben {kept} den Termin der vier von fünf Läufen gehalten; die Termine lagen um {loss:.1f} Tage daneben (Pinball-Verlust).</translation>
  </message>
  <message>
   <source>Dates are now drawn {percent:.0f} % as wide as assumed.</source>
   <translation>Termine streuen jetzt {percent:.0f} % so weit wie angenommen.</translation>
  </message>
  <message>
   <source>airbrush {airbrush}</source>
   <translation>Airbrush {airbrush}</translation>
  </message>
  <message>
   <source>add airbrush {airbrush}</source>
   <translation>Airbrush {airbrush} hinzufügen</translation>
  </message>
  <message>
   <source>remove airbrush {name}</source>
   <translation>Airbrush {name} entfernen</translation>
  </message>
  <message>
   <source>import {file}</source>
   <translation>{file} einlesen</translation>
  </message>
  <message>
   <source>it no longer answers</source>
   <translation>sie antwortet nicht mehr</translation>
  </message>
  <message>
   <source>its process cannot be started</source>
   <translation>ihr Prozess lässt sich nicht starten</translation>
  </message>
  <message>
   <source>its process was ended by signal {number}</source>
   <translation>ihr Prozess wurde durch Signal {number} beendet</translation>
  </message>
  <message>
   <source>its process ended with status {number}</source>
   <translation>ihr Prozess endete mit Status {number}</translation>
  </message>
  <message>
   <source>the search for better plans broke off: {why}; the plan stays</source>
   <translation>die Suche nach besseren Plänen brach ab: {why}; der Plan bleibt</translation>
  </message>
  <message>
   <source>done: {n} at once</source>
   <translation>fertig: {n} auf einmal</translation>
  </message>
  <message>
   <source>is {coat}, but coat {before} of "{step}" is not begun; log that first</source>
   <translation>ist {coat}, aber Schicht {before} von „{step}“ ist nicht begonnen; zuerst diese eintragen</translation>
  </message>
  <message>
   <source>{word}: {project}/{model}/{step}#{coat}</source>
   <translation>{word}: {project}/{model}/{step}#{coat}</translation>
  </message>
  <message>
   <source>"{step}" coat {coat} is already logged</source>
   <translation>„{step}“, Schicht {coat}, ist schon im Logbuch</translation>
  </message>
  <message>
   <source>ticked</source>
   <translation>abgehakt</translation>
  </message>
  <message>
   <source>not ticked</source>
   <translation>nicht abgehakt</translation>
  </message>
  <message>
   <source>{word}: {model}/{step}, {place}</source>
   <translation>{word}: {model}/{step}, {place}</translation>
  </message>
  <message>
   <source>an entry stays with its coat; take it back and log the other</source>
   <translation>ein Eintrag bleibt bei seiner Schicht; zurücknehmen und die andere eintragen</translation>
  </message>
  <message>
   <source>logbook corrected: {model}/{step}#{coat}</source>
   <translation>Logbuch berichtigt: {model}/{step}#{coat}</translation>
  </message>
  <message>
   <source>photo</source>
   <translation>Foto</translation>
  </message>
  <message>
   <source>{word}: {model}/{step}</source>
   <translation>{word}: {model}/{step}</translation>
  </message>
  <message>
   <source>taken back: {project}/{model}/{step}#{coat}</source>
   <translation>zurückgenommen: {project}/{model}/{step}#{coat}</translation>
  </message>
  <message>
   <source>partly done: {model}/{step}</source>
   <translation>zum Teil getan: {model}/{step}</translation>
  </message>
  <message>
   <source>cleaned: {airbrush}</source>
   <translation>gereinigt: {airbrush}</translation>
  </message>
  <message>
   <source>no such cleaning is logged</source>
   <translation>diese Reinigung ist nicht im Logbuch</translation>
  </message>
  <message>
   <source>taken back: cleaning of {airbrush}</source>
   <translation>zurückgenommen: Reinigung von {airbrush}</translation>
  </message>
  <message>
   <source>one more session, {start:%Y-%m-%d %H:%M}–{end:%H:%M}</source>
   <translation>eine Sitzung mehr, {start:%Y-%m-%d %H:%M}–{end:%H:%M}</translation>
  </message>
  <message>
   <source>{minutes} min at the bench</source>
   <translation>{minutes} min am Basteltisch</translation>
  </message>
  <message>
   <source>an hour longer, until {end:%Y-%m-%d %H:%M}</source>
   <translation>eine Stunde länger, bis {end:%Y-%m-%d %H:%M}</translation>
  </message>
  <message>
   <source>{step} in the next session</source>
   <translation>{step} in der nächsten Sitzung</translation>
  </message>
  <message>
   <source>it is done out of its turn</source>
   <translation>es wird außer der Reihe gemacht</translation>
  </message>
  <message>
   <source>{coating} instead of {was}</source>
   <translation>{coating} statt {was}</translation>
  </message>
  <message>
   <source>another bottle, which is on the shelf</source>
   <translation>eine andere Flasche, die im Regal steht</translation>
  </message>
  <message>
   <source>{place} {kelvin:g} °C warmer</source>
   <translation>{place} {kelvin:g} °C wärmer</translation>
  </message>
  <message>
   <source>heating, day and night</source>
   <translation>Heizung, Tag und Nacht</translation>
  </message>
  <message>
   <source>slow coats dry in a warm box</source>
   <translation>langsame Schichten trocknen in einer Wärmebox</translation>
  </message>
  <message>
   <source>a warm box with room for {places} parts</source>
   <translation>eine Wärmebox mit Platz für {places} Teile</translation>
  </message>
  <message>
   <source>{project} without this stage: {stage}</source>
   <translation>{project} ohne diesen Schritt: {stage}</translation>
  </message>
  <message>
   <source>what it would have looked like</source>
   <translation>wie es ausgesehen hätte</translation>
  </message>
  <message>
   <source>{model} is set aside</source>
   <translation>{model} wird zurückgestellt</translation>
  </message>
  <message>
   <source>one model that is not finished</source>
   <translation>ein Modell, das nicht fertig wird</translation>
  </message>
  <message>
   <source>a second airbrush</source>
   <translation>eine zweite Airbrush</translation>
  </message>
  <message>
   <source>an airbrush, and its cleaning</source>
   <translation>eine Airbrush und ihre Reinigung</translation>
  </message>
  <message>
   <source>two people at the bench {day:%Y-%m-%d}</source>
   <translation>zu zweit am Basteltisch {day:%Y-%m-%d}</translation>
  </message>
  <message>
   <source>somebody's evening</source>
   <translation>jemandes Abend</translation>
  </message>
  <message>
   <source>{project} before the others</source>
   <translation>{project} vor den anderen</translation>
  </message>
  <message>
   <source>the other projects wait</source>
   <translation>die anderen Projekte warten</translation>
  </message>
  <message>
   <source>mend {n} findings</source>
   <translation>{n} Befunde beheben</translation>
  </message>
  <message>
   <source>"{new}" is taken as well; choose another name</source>
   <translation>auch „{new}“ ist vergeben; einen anderen Namen wählen</translation>
  </message>
  <message>
   <source>no</source>
   <translation>nein</translation>
  </message>
  <message>
   <source>{number:g}</source>
   <translation>{number:g}</translation>
  </message>
  <message>
   <source>{day}</source>
   <translation>{day}</translation>
  </message>
  <message>
   <source>The end stays {day}.</source>
   <translation>Fertig bleibt es {day}.</translation>
  </message>
  <message>
   <source>The end is {day}; it was {before}.</source>
   <translation>Fertig ist es {day}; vorher {before}.</translation>
  </message>
  <message>
   <source>{work} of {model}</source>
   <translation>{work} an {model}</translation>
  </message>
  <message>
   <source>{n} more</source>
   <translation>{n} weitere</translation>
  </message>
  <message>
   <source>{day}: {works}, now without a place.</source>
   <translation>{day}: {works}, jetzt ohne Platz.</translation>
  </message>
  <message>
   <source>{day}: {works}, without a place before.</source>
   <translation>{day}: {works}, vorher ohne Platz.</translation>
  </message>
  <message>
   <source>{day}: {works}, now {after}.</source>
   <translation>{day}: {works}, jetzt {after}.</translation>
  </message>
  <message>
   <source>{at:%a} {at.day} {at:%b}</source>
   <translation>{at:%a} {at.day}. {at:%b}</translation>
  </message>
  <message>
   <source>This book lies in a network folder ({kind}): have it open on one machine at a time, for not every network keeps two from writing at once.</source>
   <translation>Dieses Buch liegt in einem Netzwerkordner ({kind}): immer nur auf einem Rechner öffnen, denn nicht jedes Netz hält zwei davon ab, gleichzeitig zu schreiben.</translation>
  </message>
  <message>
   <source>take {change} out of {whom}</source>
   <translation>{change} aus {whom} nehmen</translation>
  </message>
  <message>
   <source>{change}: {whom}</source>
   <translation>{change}: {whom}</translation>
  </message>
  <message>
   <source>"{model}" has no order yet</source>
   <translation>„{model}“ hat noch keinen Ablauf</translation>
  </message>
  <message>
   <source>there is no airbrush among the gear; add one first</source>
   <translation>unter dem Gerät ist keine Airbrush; erst eine hinzufügen</translation>
  </message>
  <message>
   <source>it has not been changed so</source>
   <translation>es wurde nicht so geändert</translation>
  </message>
  <message>
   <source>it is begun; its parts stay as they are</source>
   <translation>es ist begonnen; seine Teile bleiben, wie sie sind</translation>
  </message>
  <message>
   <source>its steps were changed by hand; choose “Paint it apart” at the place</source>
   <translation>seine Schritte wurden von Hand geändert; an der Stelle „Getrennt bemalen“ wählen</translation>
  </message>
  <message>
   <source>and {count} more coats are not noted, though later work is</source>
   <translation>und {count} weitere Gänge sind nicht notiert, spätere Arbeit aber schon</translation>
  </message>
  <message>
   <source>{work} is not noted, but “{later}” is: it is taken as done, and not planned; note it, or leave it out</source>
   <translation>{work} ist nicht notiert, „{later}“ aber schon: es gilt als getan und wird nicht geplant; notieren oder auslassen</translation>
  </message>
  <message>
   <source>{work} is not noted, but “{later}” was done over it: it is planned behind that; note it if it was done, or leave it out</source>
   <translation>{work} ist nicht notiert, „{later}“ wurde aber darüber getan: es ist danach geplant; notieren, falls es getan ist, oder auslassen</translation>
  </message>
  <message>
   <source>has no column “{name}”; begin with a line such as kind;colour;finish;ml;code</source>
   <translation>hat keine Spalte „{name}“; mit einer Zeile wie Art;Farbe;Glanz;ml;Nummer beginnen</translation>
  </message>
  <message>
   <source>is all there is; write a line for each paint</source>
   <translation>ist alles; für jede Farbe eine Zeile schreiben</translation>
  </message>
  <message>
   <source>“{name}” stands in line {line} already; give each a code of its own</source>
   <translation>„{name}“ steht schon in Zeile {line}; jeder eine eigene Nummer geben</translation>
  </message>
  <message>
   <source>“{text}” names no kind and colour; type it as acrylic, olive green, 17 ml</source>
   <translation>„{text}“ nennt keine Art und Farbe; als Acryl, olivgrün, 17 ml eingeben</translation>
  </message>
  <message>
   <source>"{mix}" is a mix; rename one</source>
   <translation>„{mix}“ ist eine Mischung; eins umbenennen</translation>
  </message>
  <message>
   <source>{n} paints of your own</source>
   <translation>{n} eigene Farben</translation>
  </message>
  <message>
   <source>is empty; say which colour it is</source>
   <translation>ist leer; angeben, welche Farbe es ist</translation>
  </message>
  <message>
   <source>is no amount of a bottle; write it in ml</source>
   <translation>ist keine Menge einer Flasche; in ml schreiben</translation>
  </message>
  <message>
   <source>“{text}” is no finish; write gloss, satin or matte</source>
   <translation>„{text}“ ist kein Glanzgrad; glänzend, seidenmatt oder matt schreiben</translation>
  </message>
  <message>
   <source>is empty; write acrylic, lacquer, enamel, oil, ink, pigment or the like</source>
   <translation>ist leer; Acryl, Nitrolack, Kunstharz, Öl, Tinte, Pigment oder Ähnliches schreiben</translation>
  </message>
  <message>
   <source>“{text}” is no kind of paint; write acrylic, lacquer, enamel, oil, ink, pigment or the like</source>
   <translation>„{text}“ ist keine Art von Farbe; Acryl, Nitrolack, Kunstharz, Öl, Tinte, Pigment oder Ähnliches schreiben</translation>
  </message>
  <message>
   <source>the logbook has no minutes of "{stage}" by {tool} yet</source>
   <translation>das Logbuch hat noch keine Minuten von „{stage}“ mit: {tool}</translation>
  </message>
  <message>
   <source>minutes of {stage} by {tool}: × {factor:g}</source>
   <translation>Minuten {stage}, {tool}: × {factor:g}</translation>
  </message>
  <message>
   <source>no film of "{coating}" was looked at yet</source>
   <translation>noch kein Film von „{coating}“ wurde angesehen</translation>
  </message>
  <message>
   <source>drying of {coating}: × {factor:g}</source>
   <translation>Trocknung von {coating}: × {factor:g}</translation>
  </message>
  <message>
   <source>nothing is certain enough yet; the logbook needs more entries</source>
   <translation>noch ist nichts sicher genug; das Logbuch braucht mehr Einträge</translation>
  </message>
  <message>
   <source>pace: {n} lessons applied</source>
   <translation>Tempo: {n} Erfahrungen übernommen</translation>
  </message>
  <message>
   <source>name at least one model</source>
   <translation>mindestens ein Modell nennen</translation>
  </message>
  <message>
   <source>{names}, painted as {model} was</source>
   <translation>{names}, bemalt wie {model}</translation>
  </message>
  <message>
   <source>is cut short</source>
   <translation>ist abgeschnitten</translation>
  </message>
  <message>
   <source>has no segment where one should be</source>
   <translation>hat keinen Abschnitt, wo einer sein müsste</translation>
  </message>
  <message>
   <source>has no end</source>
   <translation>hat kein Ende</translation>
  </message>
  <message>
   <source>pin {name} to {start:%a %Y-%m-%d %H:%M}</source>
   <translation>{name} an {start:%a %Y-%m-%d %H:%M} heften</translation>
  </message>
  <message>
   <source>{name} not before {at:%a %Y-%m-%d %H:%M}</source>
   <translation>{name} nicht vor {at:%a %Y-%m-%d %H:%M}</translation>
  </message>
  <message>
   <source>{n} jobs not before {at:%a %Y-%m-%d %H:%M}</source>
   <translation>{n} Arbeiten nicht vor {at:%a %Y-%m-%d %H:%M}</translation>
  </message>
  <message>
   <source>{work} together with {other}</source>
   <translation>{work} zusammen mit {other}</translation>
  </message>
  <message>
   <source>unpin {name}</source>
   <translation>{name} lösen</translation>
  </message>
  <message>
   <source>take back a wish: {step}, {model}</source>
   <translation>Wunsch zurücknehmen: {step}, {model}</translation>
  </message>
  <message>
   <source>add {location}</source>
   <translation>{location} hinzufügen</translation>
  </message>
  <message>
   <source>change {was}</source>
   <translation>{was} ändern</translation>
  </message>
  <message>
   <source>rename {was} to {location}</source>
   <translation>{was} in {location} umbenennen</translation>
  </message>
  <message>
   <source>is the only place; films must dry somewhere</source>
   <translation>ist der einzige Ort; irgendwo müssen Filme trocknen</translation>
  </message>
  <message>
   <source>{user} dries there; let it dry elsewhere first</source>
   <translation>{user} trocknet dort; zuerst anderswo trocknen lassen</translation>
  </message>
  <message>
   <source>remove {name}</source>
   <translation>{name} entfernen</translation>
  </message>
  <message>
   <source>usual place: {name}</source>
   <translation>üblicher Ort: {name}</translation>
  </message>
  <message>
   <source>room of {volume_m3:g} m³</source>
   <translation>Raum von {volume_m3:g} m³</translation>
  </message>
  <message>
   <source>{when:&lt;18}{work} ({parts}): {what}</source>
   <translation>{when:&lt;18}{work} ({parts}): {what}</translation>
  </message>
  <message>
   <source>now</source>
   <translation>jetzt</translation>
  </message>
  <message>
   <source>smells: air the room, and let it be gone before others go to bed</source>
   <translation>riecht: lüften, und es sei fort, bevor andere schlafen gehen</translation>
  </message>
  <message>
   <source>noisy: not in the quiet hours</source>
   <translation>laut: nicht in den Ruhezeiten</translation>
  </message>
  <message>
   <source>needs daylight: do it first</source>
   <translation>braucht Tageslicht: zuerst tun</translation>
  </message>
  <message>
   <source>{trait} by {time}</source>
   <translation>{trait}, bis {time}</translation>
  </message>
  <message>
   <source>{trait}, be done by {time}</source>
   <translation>{trait}, bis {time} fertig sein</translation>
  </message>
  <message>
   <source>{trait} ({work})</source>
   <translation>{trait} ({work})</translation>
  </message>
  <message>
   <source>Nothing to do at the bench here.</source>
   <translation>Hier ist am Basteltisch nichts zu tun.</translation>
  </message>
  <message>
   <source>No bench time ahead; add an evening.</source>
   <translation>Es kommt keine Bastelzeit mehr; einen Abend hinzufügen.</translation>
  </message>
  <message>
   <source>If all goes well, next: {stretch}</source>
   <translation>Wenn alles gut geht, danach: {stretch}</translation>
  </message>
  <message>
   <source>{airbrush} holds {coating} since {when}</source>
   <translation>in {airbrush} ist {coating} seit {when}</translation>
  </message>
  <message>
   <source>{stretch}  ({minutes} min)</source>
   <translation>{stretch}  ({minutes} min)</translation>
  </message>
  <message>
   <source>{project}: not done; without a place: {n}</source>
   <translation>{project}: nicht fertig; ohne Platz: {n}</translation>
  </message>
  <message>
   <source>{project}: done {time}</source>
   <translation>{project}: fertig {time}</translation>
  </message>
  <message>
   <source>{done}, in time for {target}</source>
   <translation>{done}, rechtzeitig für {target}</translation>
  </message>
  <message>
   <source>{done}, {span} after {target}</source>
   <translation>{done}, {span} nach {target}</translation>
  </message>
  <message>
   <source>{project}, {model}: {span} after {target}</source>
   <translation>{project}, {model}: {span} nach {target}</translation>
  </message>
  <message>
   <source>no place found for {work}: {why}</source>
   <translation>kein Platz gefunden für {work}: {why}</translation>
  </message>
  <message>
   <source>no place found for what waits for such work: {n}</source>
   <translation>kein Platz gefunden für das, was auf solche Arbeit wartet: {n}</translation>
  </message>
  <message>
   <source>{parts} of {coatings}</source>
   <translation>{parts} von {coatings}</translation>
  </message>
  <message>
   <source>why: {reason}</source>
   <translation>warum: {reason}</translation>
  </message>
  <message>
   <source>at least {amount}</source>
   <translation>mindestens {amount}</translation>
  </message>
  <message>
   <source>put out {amount} in all: {parts}</source>
   <translation>insgesamt {amount} bereitstellen: {parts}</translation>
  </message>
  <message>
   <source>hands for {minutes} min, then it goes on alone until {time}</source>
   <translation>Hände für {minutes} min, dann läuft es allein weiter bis {time}</translation>
  </message>
  <message>
   <source>{model}, {stage}</source>
   <translation>{model}, {stage}</translation>
  </message>
  <message>
   <source>{work}: {title}</source>
   <translation>{work}: {title}</translation>
  </message>
  <message>
   <source>{laid}; mix {mix}</source>
   <translation>{laid}; mischen {mix}</translation>
  </message>
  <message>
   <source>load {airbrush} with {coating}</source>
   <translation>{airbrush} mit {coating} füllen</translation>
  </message>
  <message>
   <source>change {airbrush} to {coating}</source>
   <translation>{airbrush} auf {coating} wechseln</translation>
  </message>
  <message>
   <source>clean {airbrush}</source>
   <translation>{airbrush} reinigen</translation>
  </message>
  <message>
   <source>prepare {work}</source>
   <translation>vorbereiten: {work}</translation>
  </message>
  <message>
   <source>prepare</source>
   <translation>vorbereiten</translation>
  </message>
  <message>
   <source>for {step}</source>
   <translation>für {step}</translation>
  </message>
  <message>
   <source>then it is finished</source>
   <translation>dann ist es fertig</translation>
  </message>
  <message>
   <source>{when:&lt;18}{ready:&lt;15}{coating} on {model}, {purpose}</source>
   <translation>{when:&lt;18}{ready:&lt;15}{coating} auf {model}, {purpose}</translation>
  </message>
  <message>
   <source>{by:&lt;18}end {work} before: {why}</source>
   <translation>{by:&lt;18}vorher beenden: {work}; {why}</translation>
  </message>
  <message>
   <source>{by:&lt;18}start {work} before: {why}</source>
   <translation>{by:&lt;18}vorher beginnen: {work}; {why}</translation>
  </message>
  <message>
   <source>its library cannot be loaded ({problem})</source>
   <translation>ihre Bibliothek lässt sich nicht laden ({problem})</translation>
  </message>
  <message>
   <source>an error within it ({kind}: {problem})</source>
   <translation>ein Fehler darin ({kind}: {problem})</translation>
  </message>
  <message>
   <source>"{id}" cannot stand there: {refused}</source>
   <translation>„{id}“ kann dort nicht stehen: {refused}</translation>
  </message>
  <message>
   <source>choose at least one model to give it to</source>
   <translation>mindestens ein Modell wählen, das ihn bekommt</translation>
  </message>
  <message>
   <source>give {name} to {whom}</source>
   <translation>{name} geben: {whom}</translation>
  </message>
  <message>
   <source>save {name}</source>
   <translation>{name} speichern</translation>
  </message>
  <message>
   <source>duplicate {name}</source>
   <translation>{name} verdoppeln</translation>
  </message>
  <message>
   <source>change {sequence}</source>
   <translation>{sequence} ändern</translation>
  </message>
  <message>
   <source>take over {name} for {count}</source>
   <translation>{name} übernehmen: {count}</translation>
  </message>
  <message>
   <source>{model} goes its own way</source>
   <translation>{model} geht eigene Wege</translation>
  </message>
  <message>
   <source>{n} models go their own way</source>
   <translation>{n} Modelle gehen eigene Wege</translation>
  </message>
  <message>
   <source>the stock has no "{coating}" for "{colour}"; choose another</source>
   <translation>der Vorrat hat kein „{coating}“ für „{colour}“; ein anderes wählen</translation>
  </message>
  <message>
   <source>"{name}" is taken; give it another name</source>
   <translation>„{name}“ ist vergeben; einen anderen Namen geben</translation>
  </message>
  <message>
   <source>"{name}" comes with the program; duplicate it and change the copy</source>
   <translation>„{name}“ gehört zum Programm; verdoppeln und die Kopie ändern</translation>
  </message>
  <message>
   <source>{ml:.1f} ml</source>
   <translation>{ml:.1f} ml</translation>
  </message>
  <message>
   <source>1 drop {coating}</source>
   <translation>1 Tropfen {coating}</translation>
  </message>
  <message>
   <source>{n} drops {coating}</source>
   <translation>{n} Tropfen {coating}</translation>
  </message>
  <message>
   <source>how much is not known, for its places have no area</source>
   <translation>wie viel, ist nicht bekannt, denn die Stellen haben keine Fläche</translation>
  </message>
  <message>
   <source>mix {amount}: {parts}</source>
   <translation>{amount} mischen: {parts}</translation>
  </message>
  <message>
   <source>fill in {amount}: {parts}</source>
   <translation>{amount} einfüllen: {parts}</translation>
  </message>
  <message>
   <source>put out {amount}: {parts}</source>
   <translation>{amount} bereitstellen: {parts}</translation>
  </message>
  <message>
   <source>{amount}, in {n} fills of {each}: {parts} each</source>
   <translation>{amount}, in {n} Füllungen zu {each}: je {parts}</translation>
  </message>
  <message>
   <source>{load} (least that the cup must hold)</source>
   <translation>{load} (das Wenigste, was im Becher sein muss)</translation>
  </message>
  <message>
   <source>{load}; a place without an area takes more</source>
   <translation>{load}; eine Stelle ohne Fläche braucht mehr</translation>
  </message>
  <message>
   <source>{load}; can be used for {life} min, but is needed for {needed}: mix less, twice</source>
   <translation>{load}; {life} min brauchbar, aber {needed} nötig: weniger mischen, zweimal</translation>
  </message>
  <message>
   <source>nothing was bought</source>
   <translation>nichts wurde gekauft</translation>
  </message>
  <message>
   <source>buy {n} things on the list</source>
   <translation>{n} Dinge von der Liste kaufen</translation>
  </message>
  <message>
   <source>"#{number}" is no coat; write model/step#2</source>
   <translation>„#{number}“ ist keine Schicht; Modell/Schritt#2 schreiben</translation>
  </message>
  <message>
   <source>"{text}" names no step; write it as model/step</source>
   <translation>„{text}“ nennt keinen Schritt; als Modell/Schritt schreiben</translation>
  </message>
  <message>
   <source>several steps are called so; say {several}</source>
   <translation>mehrere Schritte heißen so; genauer: {several}</translation>
  </message>
  <message>
   <source>count {name}: {ml:g} ml</source>
   <translation>{name} zählen: {ml:g} ml</translation>
  </message>
  <message>
   <source>buy 1 bottle of {name}</source>
   <translation>1 Flasche {name} kaufen</translation>
  </message>
  <message>
   <source>buy {bottles} bottles of {name}</source>
   <translation>{bottles} Flaschen {name} kaufen</translation>
  </message>
  <message>
   <source>spare margin {percent:g} %</source>
   <translation>Reserve {percent:g} %</translation>
  </message>
  <message>
   <source>add {coating}</source>
   <translation>{coating} hinzufügen</translation>
  </message>
  <message>
   <source>coating {coating}</source>
   <translation>Mittel {coating}</translation>
  </message>
  <message>
   <source>add mix {mix}</source>
   <translation>Mischung {mix} hinzufügen</translation>
  </message>
  <message>
   <source>remove mix {name}</source>
   <translation>Mischung {name} entfernen</translation>
  </message>
  <message>
   <source>count {name}: {amount:g} {unit}</source>
   <translation>{name} zählen: {amount:g} {unit}</translation>
  </message>
  <message>
   <source>buy {amount:g} {unit} of {name}</source>
   <translation>{amount:g} {unit} {name} kaufen</translation>
  </message>
  <message>
   <source>throw away {name}</source>
   <translation>{name} wegwerfen</translation>
  </message>
  <message>
   <source>add {name}</source>
   <translation>{name} hinzufügen</translation>
  </message>
  <message>
   <source>"{name}" is taken; choose another name</source>
   <translation>„{name}“ ist vergeben; einen anderen Namen wählen</translation>
  </message>
  <message>
   <source>"{name}" is used here; replace it there first</source>
   <translation>„{name}“ wird hier verwendet; dort zuerst ersetzen</translation>
  </message>
  <message>
   <source>"{name}" is used here and in {n} more places; replace it there first</source>
   <translation>„{name}“ wird hier und an {n} weiteren Stellen verwendet; dort zuerst ersetzen</translation>
  </message>
  <message>
   <source>another order of the work: {days:.1f} days on average, {percent:+d} % chance; it takes {sessions:+d} sessions and ends {later:+.1f} days by plan</source>
   <translation>eine andere Reihenfolge: {days:.1f} Tage im Mittel, {percent:+d} % Aussicht; sie braucht {sessions:+d} Sitzungen und endet nach Plan {later:+.1f} Tage</translation>
  </message>
  <message>
   <source>{word}: {n} places</source>
   <translation>{word}: {n} Stellen</translation>
  </message>
  <message>
   <source>{done} of {all} ticked</source>
   <translation>{done} von {all} abgehakt</translation>
  </message>
  <message>
   <source>{h} h {m} min</source>
   <translation>{h} h {m} min</translation>
  </message>
  <message>
   <source>expected ready</source>
   <translation>voraussichtlich bereit</translation>
  </message>
  <message>
   <source>Nothing more opens tonight.</source>
   <translation>Heute wird nichts mehr bereit.</translation>
  </message>
  <message>
   <source>Next: {name} in {left}</source>
   <translation>Als Nächstes: {name} in {left}</translation>
  </message>
  <message>
   <source>{work}, {n} min</source>
   <translation>{work}, {n} min</translation>
  </message>
  <message>
   <source>Drying</source>
   <translation>Trocknet</translation>
  </message>
  <message>
   <source>{coating} on {model}</source>
   <translation>{coating} auf {model}</translation>
  </message>
  <message>
   <source>Tonight at the bench</source>
   <translation>Heute Abend am Basteltisch</translation>
  </message>
  <message>
   <source>"{place}" must be {gain:g} °C warmer than the usual place, {most:g} °C at most</source>
   <translation>„{place}“ muss {gain:g} °C wärmer sein als der übliche Ort, höchstens {most:g} °C</translation>
  </message>
  <message>
   <source>no slow coat is left that could dry there as well</source>
   <translation>keine langsame Schicht ist übrig, die auch dort trocknen könnte</translation>
  </message>
  <message>
   <source>slow coats may dry in {place}</source>
   <translation>langsame Schichten dürfen trocknen in {place}</translation>
  </message>
  <message>
   <source>nothing with the stage "{stage}" is left to do there</source>
   <translation>dort ist nichts mit dem Arbeitsschritt „{stage}“ mehr zu tun</translation>
  </message>
  <message>
   <source>nothing with the stage "{stage}" would dry elsewhere</source>
   <translation>nichts mit dem Arbeitsschritt „{stage}“ würde anderswo trocknen</translation>
  </message>
  <message>
   <source>"{location}" is there already</source>
   <translation>„{location}“ ist schon da</translation>
  </message>
  <message>
   <source>changes nothing</source>
   <translation>ändert nichts</translation>
  </message>
  <message>
   <source>{project}: {model} first</source>
   <translation>{project}: {model} zuerst</translation>
  </message>
  <message>
   <source>{project}: all models together</source>
   <translation>{project}: alle Modelle zusammen</translation>
  </message>
  <message>
   <source>plans keep close</source>
   <translation>Pläne bleiben nahe</translation>
  </message>
  <message>
   <source>plans finish as early as can be, whatever moves</source>
   <translation>Pläne enden so früh wie möglich, was immer sich verschiebt</translation>
  </message>
  <message>
   <source>{work}: once likely ready</source>
   <translation>{work}: sobald wahrscheinlich bereit</translation>
  </message>
  <message>
   <source>{work}: once surely ready</source>
   <translation>{work}: erst wenn sicher bereit</translation>
  </message>
  <message>
   <source>what counts: {word} first</source>
   <translation>was zählt: {word} zuerst</translation>
  </message>
  <message>
   <source>never in this air</source>
   <translation>nie bei dieser Luft</translation>
  </message>
  <message>
   <source>{at:%a} {at.day} {at:%b %Y}</source>
   <translation>{at:%a} {at.day}. {at:%b %Y}</translation>
  </message>
  <message>
   <source>{at:%a} {at.day} {at:%b} {at:%H:%M}</source>
   <translation>{at:%a} {at.day}. {at:%b} {at:%H:%M}</translation>
  </message>
  <message>
   <source>{first}–{last}</source>
   <translation>{first}–{last}</translation>
  </message>
  <message>
   <source>{days} d {hours} h</source>
   <translation>{days} d {hours} h</translation>
  </message>
  <message>
   <source>{days} d</source>
   <translation>{days} d</translation>
  </message>
  <message>
   <source>its time</source>
   <translation>seine Zeit</translation>
  </message>
  <message>
   <source>{model}/{step} coat {coat}</source>
   <translation>{model}/{step} Schicht {coat}</translation>
  </message>
  <message>
   <source>paint grips bare plastic badly and tape lifts it; prime first</source>
   <translation>Farbe haftet schlecht auf blankem Kunststoff, und Band hebt sie ab; zuerst grundieren</translation>
  </message>
  <message>
   <source>like over like</source>
   <translation>Gleiches auf Gleichem</translation>
  </message>
  <message>
   <source>water leaves lacquer alone</source>
   <translation>Wasser lässt Lack in Ruhe</translation>
  </message>
  <message>
   <source>the cured film is too smooth and hard to grip; scuff it</source>
   <translation>der gehärtete Film ist zu glatt und hart zum Haften; anschleifen</translation>
  </message>
  <message>
   <source>the wash is greasy and must have dried for days</source>
   <translation>das Washing ist fettig und muss Tage getrocknet sein</translation>
  </message>
  <message>
   <source>the water under the decals must be gone</source>
   <translation>das Wasser unter den Abziehbildern muss fort sein</translation>
  </message>
  <message>
   <source>the coat that will be chipped</source>
   <translation>die Schicht, die abplatzen soll</translation>
  </message>
  <message>
   <source>wet paint darkens and floats loose pigment</source>
   <translation>nasse Farbe dunkelt lose Pigmente und schwemmt sie auf</translation>
  </message>
  <message>
   <source>it may craze bare plastic; prime, then mist coats</source>
   <translation>es kann blanken Kunststoff anlösen; grundieren, dann Nebelschichten</translation>
  </message>
  <message>
   <source>its solvent bites into the coat below; spray thin passes</source>
   <translation>sein Lösemittel beißt in die Schicht darunter; dünn spritzen</translation>
  </message>
  <message>
   <source>it dissolves and bonds to itself</source>
   <translation>er löst sich selbst an und verbindet sich</translation>
  </message>
  <message>
   <source>strong solvent swells and wrinkles a half-hardened oil film</source>
   <translation>starkes Lösemittel quillt einen halb gehärteten Ölfilm, und er runzelt</translation>
  </message>
  <message>
   <source>first passes as mist, or the decals wrinkle</source>
   <translation>erst nur nebeln, sonst runzeln die Abziehbilder</translation>
  </message>
  <message>
   <source>the spray darkens loose pigment</source>
   <translation>der Sprühnebel dunkelt lose Pigmente</translation>
  </message>
  <message>
   <source>white spirit is a weak solvent</source>
   <translation>Testbenzin ist ein schwaches Lösemittel</translation>
  </message>
  <message>
   <source>inside the family's own window</source>
   <translation>innerhalb des Fensters der Familie</translation>
  </message>
  <message>
   <source>the brush takes up a wash that is not dry</source>
   <translation>der Pinsel nimmt ein nicht trockenes Washing auf</translation>
  </message>
  <message>
   <source>white spirit creeps under decal edges</source>
   <translation>Testbenzin kriecht unter die Ränder der Abziehbilder</translation>
  </message>
  <message>
   <source>white spirit that floods bare plastic cracks it</source>
   <translation>Testbenzin, das blanken Kunststoff flutet, lässt ihn reißen</translation>
  </message>
  <message>
   <source>brushing and wiping with white spirit lifts pigment from an unsealed coat</source>
   <translation>Streichen und Wischen mit Testbenzin löst Pigment aus einer unversiegelten Schicht</translation>
  </message>
  <message>
   <source>white spirit may stay on lacquer for a short time</source>
   <translation>Testbenzin darf kurze Zeit auf Lack stehen</translation>
  </message>
  <message>
   <source>white spirit is brushed and wiped over it</source>
   <translation>Testbenzin wird darüber gestrichen und gewischt</translation>
  </message>
  <message>
   <source>white spirit takes young enamel off again</source>
   <translation>Testbenzin nimmt junges Enamel wieder ab</translation>
  </message>
  <message>
   <source>try the thinner on a hidden place</source>
   <translation>die Verdünnung an verdeckter Stelle probieren</translation>
  </message>
  <message>
   <source>the wash below must be dry, or it comes off again</source>
   <translation>das Washing darunter muss trocken sein, sonst löst es sich wieder</translation>
  </message>
  <message>
   <source>cured two-pack stands white spirit</source>
   <translation>gehärteter Zweikomponentenlack verträgt Testbenzin</translation>
  </message>
  <message>
   <source>white spirit and wiping lift and stain bare decals</source>
   <translation>Testbenzin und Wischen heben blanke Abziehbilder und verfärben sie</translation>
  </message>
  <message>
   <source>the coat must go over the fluid first</source>
   <translation>zuerst muss die Schicht über die Flüssigkeit</translation>
  </message>
  <message>
   <source>the wash carries loose pigment away</source>
   <translation>das Washing schwemmt lose Pigmente fort</translation>
  </message>
  <message>
   <source>two-pack blisters over lacquer, even with an enamel between</source>
   <translation>Zweikomponentenlack wirft über Lack Blasen, auch mit Enamel dazwischen</translation>
  </message>
  <message>
   <source>inside its recoat window, or scuffed</source>
   <translation>innerhalb seines Überlackierfensters oder angeschliffen</translation>
  </message>
  <message>
   <source>it is too hard to be chipped</source>
   <translation>er ist zu hart zum Abplatzen</translation>
  </message>
  <message>
   <source>nothing soft lies there</source>
   <translation>dort liegt nichts Weiches</translation>
  </message>
  <message>
   <source>hard enough to carry a hard film</source>
   <translation>hart genug für einen harten Film</translation>
  </message>
  <message>
   <source>a hard film cracks over one that is still soft, even with a barrier between</source>
   <translation>ein harter Film reißt über einem noch weichen, auch mit Sperrschicht dazwischen</translation>
  </message>
  <message>
   <source>chips would show, and lift to, bare plastic</source>
   <translation>Abplatzer würden bis auf den blanken Kunststoff gehen</translation>
  </message>
  <message>
   <source>wet rubbing would lift a colour that is not thoroughly dry</source>
   <translation>nasses Reiben würde eine Farbe lösen, die nicht durchgetrocknet ist</translation>
  </message>
  <message>
   <source>the clear coat guards the colour below</source>
   <translation>der Klarlack schützt die Farbe darunter</translation>
  </message>
  <message>
   <source>the fluid beads on enamel and grips badly</source>
   <translation>die Flüssigkeit perlt auf Enamel und haftet schlecht</translation>
  </message>
  <message>
   <source>the fluid beads on a greasy wash</source>
   <translation>die Flüssigkeit perlt auf einem fettigen Washing</translation>
  </message>
  <message>
   <source>cured two-pack stands wet rubbing</source>
   <translation>gehärteter Zweikomponentenlack verträgt nasses Reiben</translation>
  </message>
  <message>
   <source>wet rubbing would tear the decals</source>
   <translation>nasses Reiben würde die Abziehbilder zerreißen</translation>
  </message>
  <message>
   <source>a second layer of the same</source>
   <translation>eine zweite Lage davon</translation>
  </message>
  <message>
   <source>loose pigment floats up in the fluid</source>
   <translation>lose Pigmente schwimmen in der Flüssigkeit auf</translation>
  </message>
  <message>
   <source>decals hold badly on bare plastic and silver on it</source>
   <translation>Abziehbilder halten schlecht auf blankem Kunststoff und glänzen darauf silbrig</translation>
  </message>
  <message>
   <source>air stays in the rough surface under the film and shines silvery</source>
   <translation>in der rauen Oberfläche bleibt Luft unter dem Trägerfilm und glänzt silbrig</translation>
  </message>
  <message>
   <source>softening fluid attacks young enamel</source>
   <translation>Weichmacher greift junges Enamel an</translation>
  </message>
  <message>
   <source>decals slide off a greasy wash; seal it first</source>
   <translation>Abziehbilder rutschen von einem fettigen Washing; es zuerst versiegeln</translation>
  </message>
  <message>
   <source>a decal over a decal that has dried</source>
   <translation>ein Abziehbild über einem getrockneten</translation>
  </message>
  <message>
   <source>the water dissolves the fluid below</source>
   <translation>das Wasser löst die Flüssigkeit darunter</translation>
  </message>
  <message>
   <source>decals do not hold on loose pigment</source>
   <translation>Abziehbilder halten nicht auf losen Pigmenten</translation>
  </message>
  <message>
   <source>there is nothing yet that it could protect</source>
   <translation>noch ist nichts da, was er schützen könnte</translation>
  </message>
  <message>
   <source>the last coat would seal in what has not left the films below</source>
   <translation>die letzte Schicht würde einschließen, was aus den Filmen darunter noch nicht entwichen ist</translation>
  </message>
  <message>
   <source>a spray over loose pigment makes it fade</source>
   <translation>Sprühen über lose Pigmente lässt sie verblassen</translation>
  </message>
  <message>
   <source>nothing lies there that it could lift</source>
   <translation>dort liegt nichts, was es abheben könnte</translation>
  </message>
  <message>
   <source>tape lies on it</source>
   <translation>Band liegt darauf</translation>
  </message>
  <message>
   <source>tape lifts a wash, and what lies on it, off again</source>
   <translation>Band hebt ein Washing und was darauf liegt wieder ab</translation>
  </message>
  <message>
   <source>tape tears decals that no clear coat holds</source>
   <translation>Band reißt Abziehbilder ab, die kein Klarlack hält</translation>
  </message>
  <message>
   <source>tape pulls the coat off chipping fluid</source>
   <translation>Band zieht die Schicht von der Chipping-Flüssigkeit</translation>
  </message>
  <message>
   <source>tape lifts loose pigment and does not stick</source>
   <translation>Band hebt lose Pigmente ab und klebt nicht</translation>
  </message>
  <message>
   <source>family</source>
   <translation>Familie</translation>
  </message>
  <message>
   <source>finish</source>
   <translation>Ende</translation>
  </message>
  <message>
   <source>swatch</source>
   <translation>Farbton</translation>
  </message>
  <message>
   <source>solids</source>
   <translation>Festkörper</translation>
  </message>
  <message>
   <source>dry film</source>
   <translation>Trockenfilm</translation>
  </message>
  <message>
   <source>times</source>
   <translation>Zeiten</translation>
  </message>
  <message>
   <source>recoat</source>
   <translation>Überlackieren</translation>
  </message>
  <message>
   <source>pot life</source>
   <translation>Topfzeit</translation>
  </message>
  <message>
   <source>least</source>
   <translation>mindestens</translation>
  </message>
  <message>
   <source>most</source>
   <translation>höchstens</translation>
  </message>
  <message>
   <source>most humidity</source>
   <translation>höchste Feuchte</translation>
  </message>
  <message>
   <source>in stock</source>
   <translation>Vorrat</translation>
  </message>
  <message>
   <source>counted</source>
   <translation>gezählt</translation>
  </message>
  <message>
   <source>bottle</source>
   <translation>Flasche</translation>
  </message>
  <message>
   <source>drops per ml</source>
   <translation>Tropfen je ml</translation>
  </message>
  <message>
   <source>opened</source>
   <translation>geöffnet</translation>
  </message>
  <message>
   <source>slowness</source>
   <translation>Langsamkeit</translation>
  </message>
  <message>
   <source>effect</source>
   <translation>Effekt</translation>
  </message>
  <message>
   <source>hiding</source>
   <translation>Deckkraft</translation>
  </message>
  <message>
   <source>doubt</source>
   <translation>Zweifel</translation>
  </message>
  <message>
   <source>steeper</source>
   <translation>steiler</translation>
  </message>
  <message>
   <source>retarder</source>
   <translation>Verzögerer</translation>
  </message>
  <message>
   <source>source</source>
   <translation>Quelle</translation>
  </message>
  <message>
   <source>opens</source>
   <translation>öffnet</translation>
  </message>
  <message>
   <source>best</source>
   <translation>am besten</translation>
  </message>
  <message>
   <source>closes</source>
   <translation>schließt</translation>
  </message>
  <message>
   <source>preparation</source>
   <translation>Vorbereitung</translation>
  </message>
  <message>
   <source>merges</source>
   <translation>verschmilzt</translation>
  </message>
  <message>
   <source>clock</source>
   <translation>Uhr</translation>
  </message>
  <message>
   <source>portions</source>
   <translation>Anteile</translation>
  </message>
  <message>
   <source>life</source>
   <translation>Haltbarkeit</translation>
  </message>
  <message>
   <source>parts</source>
   <translation>Teile</translation>
  </message>
  <message>
   <source>target</source>
   <translation>Termin</translation>
  </message>
  <message>
   <source>weight</source>
   <translation>Gewicht</translation>
  </message>
  <message>
   <source>active</source>
   <translation>aktiv</translation>
  </message>
  <message>
   <source>pins</source>
   <translation>Wünsche</translation>
  </message>
  <message>
   <source>log</source>
   <translation>Logbuch</translation>
  </message>
  <message>
   <source>pilot</source>
   <translation>zuerst</translation>
  </message>
  <message>
   <source>observed</source>
   <translation>Blicke</translation>
  </message>
  <message>
   <source>diary</source>
   <translation>Tagebuch</translation>
  </message>
  <message>
   <source>begins</source>
   <translation>beginnt</translation>
  </message>
  <message>
   <source>steps</source>
   <translation>Schritte</translation>
  </message>
  <message>
   <source>scale</source>
   <translation>Maßstab</translation>
  </message>
  <message>
   <source>real size</source>
   <translation>Größe des Originals</translation>
  </message>
  <message>
   <source>made</source>
   <translation>entstanden aus</translation>
  </message>
  <message>
   <source>early</source>
   <translation>früh</translation>
  </message>
  <message>
   <source>on</source>
   <translation>am</translation>
  </message>
  <message>
   <source>not before</source>
   <translation>nicht vor</translation>
  </message>
  <message>
   <source>beside</source>
   <translation>zusammen mit</translation>
  </message>
  <message>
   <source>temperature</source>
   <translation>Temperatur</translation>
  </message>
  <message>
   <source>humidity</source>
   <translation>Feuchte</translation>
  </message>
  <message>
   <source>at</source>
   <translation>um</translation>
  </message>
  <message>
   <source>event</source>
   <translation>Ereignis</translation>
  </message>
  <message>
   <source>holder</source>
   <translation>Halter</translation>
  </message>
  <message>
   <source>stands</source>
   <translation>Trockenplätze</translation>
  </message>
  <message>
   <source>material</source>
   <translation>Werkstoff</translation>
  </message>
  <message>
   <source>stressed</source>
   <translation>gespannt</translation>
  </message>
  <message>
   <source>id</source>
   <translation>Kurzname</translation>
  </message>
  <message>
   <source>stage</source>
   <translation>Arbeitsschritt</translation>
  </message>
  <message>
   <source>applications</source>
   <translation>Aufträge</translation>
  </message>
  <message>
   <source>touches</source>
   <translation>berührt</translation>
  </message>
  <message>
   <source>gates</source>
   <translation>Bedingungen</translation>
  </message>
  <message>
   <source>after</source>
   <translation>nach</translation>
  </message>
  <message>
   <source>role</source>
   <translation>Rolle</translation>
  </message>
  <message>
   <source>split least</source>
   <translation>kleinstes Stück</translation>
  </message>
  <message>
   <source>helper</source>
   <translation>Hilfe</translation>
  </message>
  <message>
   <source>dries in</source>
   <translation>trocknet in</translation>
  </message>
  <message>
   <source>scraped</source>
   <translation>blank geschabt</translation>
  </message>
  <message>
   <source>or in</source>
   <translation>oder in</translation>
  </message>
  <message>
   <source>traits</source>
   <translation>Kennzeichen</translation>
  </message>
  <message>
   <source>look in</source>
   <translation>nachsehen nach</translation>
  </message>
  <message>
   <source>length</source>
   <translation>Länge</translation>
  </message>
  <message>
   <source>width</source>
   <translation>Breite</translation>
  </message>
  <message>
   <source>height</source>
   <translation>Höhe</translation>
  </message>
  <message>
   <source>options</source>
   <translation>Optionen</translation>
  </message>
  <message>
   <source>colours</source>
   <translation>Farben</translation>
  </message>
  <message>
   <source>changes</source>
   <translation>Änderungen</translation>
  </message>
  <message>
   <source>share</source>
   <translation>Anteil</translation>
  </message>
  <message>
   <source>fixed</source>
   <translation>fest</translation>
  </message>
  <message>
   <source>per part</source>
   <translation>je Teil</translation>
  </message>
  <message>
   <source>per change</source>
   <translation>je Wechsel</translation>
  </message>
  <message>
   <source>windows</source>
   <translation>Fenster</translation>
  </message>
  <message>
   <source>closing</source>
   <translation>Schließen</translation>
  </message>
  <message>
   <source>side</source>
   <translation>Seite</translation>
  </message>
  <message>
   <source>area</source>
   <translation>Fläche</translation>
  </message>
  <message>
   <source>measures</source>
   <translation>Maße</translation>
  </message>
  <message>
   <source>detail</source>
   <translation>Details</translation>
  </message>
  <message>
   <source>shape</source>
   <translation>Form</translation>
  </message>
  <message>
   <source>count</source>
   <translation>Anzahl</translation>
  </message>
  <message>
   <source>made for</source>
   <translation>gedacht für</translation>
  </message>
  <message>
   <source>usual</source>
   <translation>üblich</translation>
  </message>
  <message>
   <source>choice</source>
   <translation>Wahl</translation>
  </message>
  <message>
   <source>needs</source>
   <translation>braucht</translation>
  </message>
  <message>
   <source>unless</source>
   <translation>außer bei</translation>
  </message>
  <message>
   <source>a waterborne coat</source>
   <translation>eine wasserverdünnbare Schicht</translation>
  </message>
  <message>
   <source>a lacquer coat</source>
   <translation>eine Lackschicht</translation>
  </message>
  <message>
   <source>an enamel or oil coat</source>
   <translation>eine Enamel- oder Ölschicht</translation>
  </message>
  <message>
   <source>an oil or white-spirit wash</source>
   <translation>ein Washing aus Öl oder mit Testbenzin</translation>
  </message>
  <message>
   <source>a two-pack coat</source>
   <translation>eine Zweikomponentenschicht</translation>
  </message>
  <message>
   <source>a hard coat (lacquer clear, two-pack)</source>
   <translation>eine harte Schicht (Lack-Klarlack, Zweikomponenten)</translation>
  </message>
  <message>
   <source>chipping fluid</source>
   <translation>Chipping-Flüssigkeit</translation>
  </message>
  <message>
   <source>decals and their softening fluid</source>
   <translation>Abziehbilder und ihr Weichmacher</translation>
  </message>
  <message>
   <source>the last coat</source>
   <translation>die letzte Schicht</translation>
  </message>
  <message>
   <source>masking tape</source>
   <translation>Maskierband</translation>
  </message>
  <message>
   <source>bare plastic</source>
   <translation>blanker Kunststoff</translation>
  </message>
  <message>
   <source>a clear coat</source>
   <translation>eine Klarlackschicht</translation>
  </message>
  <message>
   <source>enamel younger than two weeks</source>
   <translation>Enamel, jünger als zwei Wochen</translation>
  </message>
  <message>
   <source>enamel older than two weeks</source>
   <translation>Enamel, älter als zwei Wochen</translation>
  </message>
  <message>
   <source>cured two-pack</source>
   <translation>gehärteter Zweikomponentenlack</translation>
  </message>
  <message>
   <source>decals</source>
   <translation>Abziehbilder</translation>
  </message>
  <message>
   <source>loose pigment or graphite</source>
   <translation>lose Pigmente oder Graphit</translation>
  </message>
  <message>
   <source>skipped</source>
   <translation>ausgelassen</translation>
  </message>
  <message>
   <source>dropped</source>
   <translation>heruntergefallen</translation>
  </message>
  <message>
   <source>disliked</source>
   <translation>gefällt nicht</translation>
  </message>
  <message>
   <source>still tacky</source>
   <translation>klebt noch</translation>
  </message>
  <message>
   <source>window missed</source>
   <translation>Fenster verpasst</translation>
  </message>
  <message>
   <source>ran out</source>
   <translation>ausgegangen</translation>
  </message>
  <message>
   <source>stopped early</source>
   <translation>früher aufgehört</translation>
  </message>
  <message>
   <source>over a film not ready</source>
   <translation>über einem Film, der nicht bereit war</translation>
  </message>
  <message>
   <source>after its window</source>
   <translation>nach seinem Fenster</translation>
  </message>
  <message>
   <source>late</source>
   <translation>Verspätung</translation>
  </message>
  <message>
   <source>stretches</source>
   <translation>Sitzungen</translation>
  </message>
  <message>
   <source>setup_minutes</source>
   <translation>Rüstminuten</translation>
  </message>
  <message>
   <source>moved</source>
   <translation>Verschobenes</translation>
  </message>
  <message>
   <source>how it has come out</source>
   <translation>wie es geworden ist</translation>
  </message>
  <message>
   <source>dull enough to be wiped back</source>
   <translation>matt genug zum Zurückwischen</translation>
  </message>
  <message>
   <source>tide marks</source>
   <translation>Wasserränder</translation>
  </message>
  <message>
   <source>frosting, dust and runs</source>
   <translation>Raureif, Staub und Läufer</translation>
  </message>
  <message>
   <source>bubbles and lifted edges</source>
   <translation>Blasen und gehobene Ränder</translation>
  </message>
  <message>
   <source>silvery shine under decals</source>
   <translation>Silberglanz unter Abziehbildern</translation>
  </message>
  <message>
   <source>load</source>
   <translation>füllen</translation>
  </message>
  <message>
   <source>change</source>
   <translation>wechseln</translation>
  </message>
  <message>
   <source>clean</source>
   <translation>reinigen</translation>
  </message>
  <message>
   <source>Spray mist: extract it, and wear a mask that stops particles and vapour; a dust mask stops no vapour.</source>
   <translation>Sprühnebel: Absaugen und eine Maske tragen, die Partikel und Dampf zurückhält; eine Staubmaske hält keinen Dampf zurück.</translation>
  </message>
  <message>
   <source>29 CFR 1910.134 (choice of respirators); EN 14387 (combined filters)</source>
   <translation>29 CFR 1910.134 (Wahl von Atemschutz); EN 14387 (Kombinationsfilter)</translation>
  </message>
  <message>
   <source>spray mist</source>
   <translation>Sprühnebel</translation>
  </message>
  <message>
   <source>Solvent vapour: air the room well; no flame, spark or unsealed motor near it.</source>
   <translation>Lösemitteldampf: Den Raum gut lüften; keine Flamme, keine Funken, kein ungekapselter Motor in der Nähe.</translation>
  </message>
  <message>
   <source>29 CFR 1910.94(c)(6) (vapour at most a quarter of the lower explosive limit)</source>
   <translation>29 CFR 1910.94(c)(6) (Dampf höchstens ein Viertel der unteren Explosionsgrenze)</translation>
  </message>
  <message>
   <source>solvent vapour</source>
   <translation>Lösemitteldampf</translation>
  </message>
  <message>
   <source>A two-pack with isocyanate must not be sprayed in a hobby room: it can cause asthma, filters give no warning by smell. Read which hardener it has.</source>
   <translation>Ein Zweikomponentenlack mit Isocyanat darf nicht im Bastelzimmer gesprüht werden: Er kann Asthma auslösen, und Filter warnen nicht durch Geruch. Lesen Sie nach, welchen Härter er hat.</translation>
  </message>
  <message>
   <source>NIOSH Alert 96-111; HSE INDG388</source>
   <translation>NIOSH Alert 96-111; HSE INDG388</translation>
  </message>
  <message>
   <source>isocyanate</source>
   <translation>Isocyanat</translation>
  </message>
  <message>
   <source>Rags with drying oil heat themselves and can catch fire: spread them flat outdoors, or keep them under water in a closed metal can.</source>
   <translation>Lappen mit trocknendem Öl erwärmen sich von selbst und können sich entzünden: Im Freien flach ausbreiten oder unter Wasser in einer geschlossenen Blechdose aufbewahren.</translation>
  </message>
  <message>
   <source>Juita et al. 2012, Fire Science Reviews 1:3 (mechanism); TB 43-0209 (cloths soaked with oil)</source>
   <translation>Juita et al. 2012, Fire Science Reviews 1:3 (Mechanismus); TB 43-0209 (ölgetränkte Lappen)</translation>
  </message>
  <message>
   <source>oily rags</source>
   <translation>ölige Lappen</translation>
  </message>
  <message>
   <source>Cyanoacrylate bonds skin at once and its vapour stings (limit 0.2 ppm): gloves, fresh air, eyes away.</source>
   <translation>Sekundenkleber (Cyanacrylat) klebt Haut sofort zusammen, und sein Dampf reizt (Grenzwert 0,2 ppm): Handschuhe, frische Luft, Augen fernhalten.</translation>
  </message>
  <message>
   <source>workplace limit of ethyl cyanoacrylate, as the chemicals library 1.5.2 holds it</source>
   <translation>Arbeitsplatzgrenzwert von Ethylcyanacrylat nach der Bibliothek chemicals 1.5.2</translation>
  </message>
  <message>
   <source>glue on skin and eyes</source>
   <translation>Kleber auf Haut und Augen</translation>
  </message>
  <message>
   <source>Blade: cut away from the fingers, and change it before it needs force.</source>
   <translation>Klinge: Von den Fingern weg schneiden und wechseln, bevor sie Kraft braucht.</translation>
  </message>
  <message>
   <source>blade</source>
   <translation>Klinge</translation>
  </message>
  <message>
   <source>Pigment dust: do not blow it about, and do not breathe it.</source>
   <translation>Pigmentstaub: Nicht aufwirbeln und nicht einatmen.</translation>
  </message>
  <message>
   <source>pigment dust</source>
   <translation>Pigmentstaub</translation>
  </message>
  <message>
   <source>Gloves: solvents and two-pack go through the skin; nitrile, and changed when wet.</source>
   <translation>Handschuhe: Lösemittel und Zweikomponentenlack gehen durch die Haut; Nitril, und wechseln, wenn sie nass sind.</translation>
  </message>
  <message>
   <source>common practice, no source; the safety data sheet names the glove</source>
   <translation>übliche Praxis, ohne Quelle; das Sicherheitsdatenblatt nennt den Handschuh</translation>
  </message>
  <message>
   <source>gloves</source>
   <translation>Handschuhe</translation>
  </message>
  <message>
   <source>Resin dust: sand and scrape it wet, with a dust mask, and wipe it up wet.</source>
   <translation>Resinstaub: nass schleifen und schaben, mit Staubmaske, und nass aufwischen.</translation>
  </message>
  <message>
   <source>common practice, no source; UFC 3-190-06 par. 13.4 (wet sanding)</source>
   <translation>übliche Praxis, ohne Quelle; UFC 3-190-06 Abs. 13.4 (Nassschleifen)</translation>
  </message>
  <message>
   <source>resin dust</source>
   <translation>Harzstaub</translation>
  </message>
  <message>
   <source>fits between its neighbours in order</source>
   <translation>passt der Reihe nach zwischen seine Nachbarn</translation>
  </message>
  <message>
   <source>gloss stays soft longer</source>
   <translation>Glanz bleibt länger weich</translation>
  </message>
  <message>
   <source>thin acrylic, brushed in layers, takes another coat after 10 to 20 min</source>
   <translation>dünnes Acryl, in Lagen gepinselt, nimmt nach 10 bis 20 min die nächste an</translation>
  </message>
  <message>
   <source>tape on gloss paint: marks at 24 h, still some at 48 h</source>
   <translation>Klebeband auf glänzender Farbe: nach 24 h Abdrücke, nach 48 h noch einige</translation>
  </message>
  <message>
   <source>gloss clear to white-spirit wash: the next evening, along recesses up to two</source>
   <translation>Glanzlack bis zur Lasur mit Testbenzin: am nächsten Abend, in Vertiefungen bis zu zwei</translation>
  </message>
  <message>
   <source>thin airbrushed coats are handled within the hour</source>
   <translation>dünn gespritzte Schichten fasst man innerhalb einer Stunde an</translation>
  </message>
  <message>
   <source>between matte and gloss</source>
   <translation>zwischen Matt und Glanz</translation>
  </message>
  <message>
   <source>one night or 24 h lies between unlike layers; told from 4 h to 48 h</source>
   <translation>zwischen ungleichen Schichten liegt eine Nacht oder ein Tag; erzählt werden 4 bis 48 h</translation>
  </message>
  <message>
   <source>tape on matte paint: at 2 h faint marks, usual 24 h</source>
   <translation>Band auf Mattfarbe: nach 2 h schwache Abdrücke, üblich 24 h</translation>
  </message>
  <message>
   <source>airbrushed lacquer: next coat in 20 min to 1 h, tape in 1 to 2 h</source>
   <translation>gespritzter Lack: nächste Schicht nach 20 min bis 1 h, Klebeband nach 1 bis 2 h</translation>
  </message>
  <message>
   <source>lacquer clear is touch-dry in 30 min, yet a heavy coat hardens for 24 h</source>
   <translation>Klarlack ist nach 30 min griffest, doch eine dicke Schicht härtet 24 h</translation>
  </message>
  <message>
   <source>TT-P-645C Table III: touch-dry in 2 h at most (alkyd primer)</source>
   <translation>TT-P-645C Tabelle III: in höchstens 2 h berührtrocken (Alkydgrundierung)</translation>
  </message>
  <message>
   <source>label times of an oil enamel: tack-free in 2 to 4 h, to handle in 5 to 9 h</source>
   <translation>Etikett einer Ölfarbe: klebfrei nach 2 bis 4 h, anfassbar nach 5 bis 9 h</translation>
  </message>
  <message>
   <source>enamel to the next coat: 6 to 12 h where matte, 24 h usual, 48 h careful</source>
   <translation>Kunstharzlack bis zur nächsten Schicht: matt 6 bis 12 h, üblich 24 h, vorsichtig 48 h</translation>
  </message>
  <message>
   <source>enamel to thinner washes or varnish: 7 to 14 days</source>
   <translation>Enamel bis zu Verdünnungswashings oder Klarlack: 7 bis 14 Tage</translation>
  </message>
  <message>
   <source>thin oil colour is touch-dry in 1 to 7 days, by pigment; a wash by the evening</source>
   <translation>dünne Ölfarbe ist je nach Pigment in 1 bis 7 Tagen griffest, eine Lasur bis zum Abend</translation>
  </message>
  <message>
   <source>oil wash to the next layer: 24 to 48 h, several days under solvent</source>
   <translation>Öllasur bis zur nächsten Schicht: 24 bis 48 h, unter Lösemittel mehrere Tage</translation>
  </message>
  <message>
   <source>alcohol-borne colour: next coat or tape in 1 to 2 h</source>
   <translation>alkoholverdünnte Farbe: nächste Schicht oder Band nach 1 bis 2 h</translation>
  </message>
  <message>
   <source>as lacquer</source>
   <translation>wie Lack</translation>
  </message>
  <message>
   <source>clear of a refinish: fit for assembly in 5 h at 20 °C</source>
   <translation>Klarlack der Reparaturlackierung: nach 5 h bei 20 °C montagefest</translation>
  </message>
  <message>
   <source>USAF TO 1-1-8 par. 5.6.2: epoxy primer to topcoat 5 h at 24 °C</source>
   <translation>USAF TO 1-1-8 Abs. 5.6.2: Epoxidgrundierung bis Decklack 5 h bei 24 °C</translation>
  </message>
  <message>
   <source>marine urethane data: tape after 12 to 24 h, limited service after 72 to 96 h, at 25 °C</source>
   <translation>Angaben zu Bootslack (PUR): Klebeband nach 12 bis 24 h, begrenzt belastbar nach 72 bis 96 h, bei 25 °C</translation>
  </message>
  <message>
   <source>clear of a refinish: total hardness after 24 h</source>
   <translation>Klarlack der Reparaturlackierung: voll hart nach 24 h</translation>
  </message>
  <message>
   <source>its carrier leaves; laid dry, sooner</source>
   <translation>sein Träger entweicht; trocken aufgetragen früher</translation>
  </message>
  <message>
   <source>no figure known; its solvent leaves</source>
   <translation>kein Wert bekannt; sein Lösemittel entweicht</translation>
  </message>
  <message>
   <source>decals to seal coat: overnight, 12 to 24 h until the water is gone</source>
   <translation>Abziehbilder bis zur Versiegelung: über Nacht, 12 bis 24 h, bis das Wasser fort ist</translation>
  </message>
  <message>
   <source>10 to 15 min between its coats</source>
   <translation>10 bis 15 min zwischen seinen Schichten</translation>
  </message>
  <message>
   <source>thin and water-soluble</source>
   <translation>dünn und wasserlöslich</translation>
  </message>
  <message>
   <source>cement joints to paint: a few hours, usually overnight</source>
   <translation>Klebestellen bis zur Farbe: einige Stunden, meist über Nacht</translation>
  </message>
  <message>
   <source>holds in 5 to 60 s at 40 to 60 % RH</source>
   <translation>hält in 5 bis 60 s bei 40 bis 60 % r. F.</translation>
  </message>
  <message>
   <source>the white bloom of its vapour is over</source>
   <translation>der weiße Schleier seines Dampfes ist vorüber</translation>
  </message>
  <message>
   <source>full strength in 24 h</source>
   <translation>volle Festigkeit in 24 h</translation>
  </message>
  <message>
   <source>sets in 20 to 60 min clamped</source>
   <translation>bindet eingespannt in 20 bis 60 min ab</translation>
  </message>
  <message>
   <source>half of full strength</source>
   <translation>halbe Festigkeit</translation>
  </message>
  <message>
   <source>turns clear in about half an hour</source>
   <translation>wird in etwa einer halben Stunde klar</translation>
  </message>
  <message>
   <source>until the water that it lies in is gone</source>
   <translation>bis das Wasser fort ist, in dem es liegt</translation>
  </message>
  <message>
   <source>leaves no film; until it is gone</source>
   <translation>hinterlässt keinen Film; bis er fort ist</translation>
  </message>
  <message>
   <source>rubbed on dry; nothing has to dry</source>
   <translation>trocken eingerieben; nichts muss trocknen</translation>
  </message>
  <message>
   <source>leaves no film; until the water is gone</source>
   <translation>hinterlässt keinen Film; bis das Wasser fort ist</translation>
  </message>
 </context>
 <context>
  <name>sequence</name>
  <message>
   <source>quick table-top</source>
   <translation>schnell für den Spieltisch</translation>
  </message>
  <message>
   <source>Primer, one colour, a shading wash, dry-brushed edges, matte clear.</source>
   <translation>Grundierung, eine Farbe, ein schattierendes Washing, trockengemalte Kanten, Mattlack.</translation>
  </message>
  <message>
   <source>full weathered vehicle</source>
   <translation>Fahrzeug mit voller Verwitterung</translation>
  </message>
  <message>
   <source>Everything a weathered vehicle may get; the order that painters dispute is yours.</source>
   <translation>Alles, was ein verwittertes Fahrzeug bekommen kann; über die Reihenfolge streiten die Maler, sie bleibt Ihnen überlassen.</translation>
  </message>
  <message>
   <source>single-colour vehicle</source>
   <translation>Fahrzeug in einer Farbe</translation>
  </message>
  <message>
   <source>A civilian car, lorry or boat in one colour, with trim picked out and a clear coat.</source>
   <translation>Ein ziviles Auto, ein Lastwagen oder ein Boot in einer Farbe, mit bemalten Zierteilen und Klarlack.</translation>
  </message>
  <message>
   <source>winter whitewash</source>
   <translation>Wintertarnung</translation>
  </message>
  <message>
   <source>A colour scheme under gloss, chipping fluid, white worn off while it is soft.</source>
   <translation>Ein Farbschema unter Glanzlack, Chipping-Flüssigkeit, Weiß, das abgerieben wird, solange es weich ist.</translation>
  </message>
  <message>
   <source>figure</source>
   <translation>Figur</translation>
  </message>
  <message>
   <source>One figure, or a group on one holder; a part called base is painted apart.</source>
   <translation>Eine Figur oder eine Gruppe auf einem Halter; ein Teil namens „base“ wird getrennt bemalt.</translation>
  </message>
  <message>
   <source>scenery piece</source>
   <translation>Geländestück</translation>
  </message>
  <message>
   <source>A wall, ruin, rock, shed or tree stump; everything that is dry-brushed.</source>
   <translation>Eine Mauer, Ruine, ein Fels, Schuppen oder Baumstumpf; alles, was trockengemalt wird.</translation>
  </message>
 </context>
 <context>
  <name>shape</name>
  <message>
   <source>box</source>
   <translation>Quader</translation>
  </message>
  <message>
   <source>cylinder</source>
   <translation>Zylinder</translation>
  </message>
  <message>
   <source>tube</source>
   <translation>Rohr</translation>
  </message>
  <message>
   <source>shell</source>
   <translation>Fläche</translation>
  </message>
  <message>
   <source>ball</source>
   <translation>Kugel</translation>
  </message>
 </context>
 <context>
  <name>sheet_of_strip</name>
  <message>
   <source>Tackfree, planned {day} {time} · page {page} of {pages}</source>
   <translation>Tackfree, geplant {day} {time} · Seite {page} von {pages}</translation>
  </message>
  <message>
   <source>Timeline</source>
   <translation>Zeitstrahl</translation>
  </message>
  <message>
   <source>Save the timeline</source>
   <translation>Zeitstrahl sichern</translation>
  </message>
  <message>
   <source>timeline.pdf</source>
   <translation>zeitstrahl.pdf</translation>
  </message>
  <message>
   <source>PDF (*.pdf)</source>
   <translation>PDF (*.pdf)</translation>
  </message>
  <message>
   <source>{file} cannot be written: {why}</source>
   <translation>{file} lässt sich nicht schreiben: {why}</translation>
  </message>
  <message>
   <source>{n} page written to {file}</source>
   <translation>{n} Seite nach {file} geschrieben</translation>
  </message>
  <message>
   <source>{n} pages written to {file}</source>
   <translation>{n} Seiten nach {file} geschrieben</translation>
  </message>
 </context>
 <context>
  <name>side</name>
  <message>
   <source>top</source>
   <translation>oben</translation>
  </message>
  <message>
   <source>under</source>
   <translation>unten</translation>
  </message>
 </context>
 <context>
  <name>stage</name>
  <message>
   <source>prime</source>
   <translation>Grundierung</translation>
  </message>
  <message>
   <source>base</source>
   <translation>Grundfarbe</translation>
  </message>
  <message>
   <source>camo</source>
   <translation>Tarnfarbe</translation>
  </message>
  <message>
   <source>highlight</source>
   <translation>Aufhellung</translation>
  </message>
  <message>
   <source>detail</source>
   <translation>Detailbemalung</translation>
  </message>
  <message>
   <source>dry-brush</source>
   <translation>Trockenmalen</translation>
  </message>
  <message>
   <source>wash</source>
   <translation>Washing</translation>
  </message>
  <message>
   <source>oil wash</source>
   <translation>Ölwashing</translation>
  </message>
  <message>
   <source>wipe back</source>
   <translation>Washing abnehmen</translation>
  </message>
  <message>
   <source>filter</source>
   <translation>Filter</translation>
  </message>
  <message>
   <source>varnish</source>
   <translation>Klarlack</translation>
  </message>
  <message>
   <source>decal</source>
   <translation>Abziehbilder</translation>
  </message>
  <message>
   <source>press decals</source>
   <translation>Abziehbilder andrücken</translation>
  </message>
  <message>
   <source>chip</source>
   <translation>Abplatzer</translation>
  </message>
  <message>
   <source>chip fluid</source>
   <translation>Chipping-Flüssigkeit</translation>
  </message>
  <message>
   <source>chip rub</source>
   <translation>Abplatzer reiben</translation>
  </message>
  <message>
   <source>pigment</source>
   <translation>Pigmente</translation>
  </message>
  <message>
   <source>weather</source>
   <translation>Verwitterung</translation>
  </message>
  <message>
   <source>mask</source>
   <translation>Maskierung</translation>
  </message>
  <message>
   <source>unmask</source>
   <translation>Maskierung abnehmen</translation>
  </message>
  <message>
   <source>turn</source>
   <translation>Wenden</translation>
  </message>
  <message>
   <source>join</source>
   <translation>Zusammenkleben</translation>
  </message>
  <message>
   <source>clean</source>
   <translation>Reinigung</translation>
  </message>
  <message>
   <source>matte</source>
   <translation>Mattlack</translation>
  </message>
  <message>
   <source>decal bed</source>
   <translation>Klarlack unter Abziehbildern</translation>
  </message>
  <message>
   <source>seal</source>
   <translation>Versiegelung</translation>
  </message>
  <message>
   <source>barrier</source>
   <translation>Sperrschicht</translation>
  </message>
  <message>
   <source>final</source>
   <translation>Schlusslack</translation>
  </message>
 </context>
 <context>
  <name>state</name>
  <message>
   <source>set-to-touch</source>
   <translation>berührtrocken</translation>
  </message>
  <message>
   <source>dust-free</source>
   <translation>staubtrocken</translation>
  </message>
  <message>
   <source>tack-free</source>
   <translation>klebfrei</translation>
  </message>
  <message>
   <source>dry-to-handle</source>
   <translation>griffest</translation>
  </message>
  <message>
   <source>dry-to-recoat</source>
   <translation>überlackierbar</translation>
  </message>
  <message>
   <source>print-free</source>
   <translation>abdruckfrei</translation>
  </message>
  <message>
   <source>solvent-safe</source>
   <translation>lösemittelfest</translation>
  </message>
  <message>
   <source>dry-through</source>
   <translation>durchgetrocknet</translation>
  </message>
 </context>
 <context>
  <name>status</name>
  <message>
   <source>label</source>
   <translation>Etikett</translation>
  </message>
  <message>
   <source>published</source>
   <translation>veröffentlicht</translation>
  </message>
  <message>
   <source>common practice, no source</source>
   <translation>gängige Praxis, ohne Quelle</translation>
  </message>
  <message>
   <source>assumed</source>
   <translation>angenommen</translation>
  </message>
 </context>
 <context>
  <name>step</name>
  <message>
   <source>Wash with detergent, rinse, let it dry</source>
   <translation>Mit Spülmittel waschen, abspülen, trocknen lassen</translation>
  </message>
  <message>
   <source>Prime</source>
   <translation>Grundieren</translation>
  </message>
  <message>
   <source>Base colour</source>
   <translation>Grundfarbe</translation>
  </message>
  <message>
   <source>Wheels and tracks</source>
   <translation>Räder und Ketten</translation>
  </message>
  <message>
   <source>Shading wash all over</source>
   <translation>Schattierendes Washing überall</translation>
  </message>
  <message>
   <source>Dry-brush the edges</source>
   <translation>Kanten trockenmalen</translation>
  </message>
  <message>
   <source>Scrape the joint faces and glue on what was painted apart</source>
   <translation>Klebeflächen blank schaben und ankleben, was getrennt bemalt wurde</translation>
  </message>
  <message>
   <source>Gloss clear where decals will lie</source>
   <translation>Glanzlack, wo Abziehbilder liegen werden</translation>
  </message>
  <message>
   <source>Decals</source>
   <translation>Abziehbilder</translation>
  </message>
  <message>
   <source>Press the decals down while the setting fluid works; wipe glue off with a damp cloth</source>
   <translation>Abziehbilder andrücken, solange der Weichmacher wirkt; Leim mit feuchtem Tuch abwischen</translation>
  </message>
  <message>
   <source>Matte clear over everything</source>
   <translation>Mattlack über alles</translation>
  </message>
  <message>
   <source>Mask the glazing</source>
   <translation>Verglasung maskieren</translation>
  </message>
  <message>
   <source>Look over seams in the primer; fill and sand what shows</source>
   <translation>Nähte in der Grundierung durchsehen; spachteln und schleifen, was sich zeigt</translation>
  </message>
  <message>
   <source>Prime again where it was sanded</source>
   <translation>Dort noch einmal grundieren, wo geschliffen wurde</translation>
  </message>
  <message>
   <source>Look over it once more before the colour</source>
   <translation>Vor der Farbe noch einmal durchsehen</translation>
  </message>
  <message>
   <source>Undercoat that chips will show</source>
   <translation>Unterschicht, die an Abplatzern zu sehen ist</translation>
  </message>
  <message>
   <source>Chipping fluid, thin</source>
   <translation>Chipping-Flüssigkeit, dünn</translation>
  </message>
  <message>
   <source>Base colour over the fluid, two thin coats</source>
   <translation>Grundfarbe über die Flüssigkeit, zwei dünne Schichten</translation>
  </message>
  <message>
   <source>Pull the tape off the glazing</source>
   <translation>Band von der Verglasung abziehen</translation>
  </message>
  <message>
   <source>Wet the base, rub chips through it, rinse off leftover fluid</source>
   <translation>Grundfarbe anfeuchten, Abplatzer hindurch reiben, übrige Flüssigkeit abspülen</translation>
  </message>
  <message>
   <source>Second colour</source>
   <translation>Zweite Farbe</translation>
  </message>
  <message>
   <source>Third colour</source>
   <translation>Dritte Farbe</translation>
  </message>
  <message>
   <source>Wet the colours, rub chips through them, rinse off leftover fluid</source>
   <translation>Farben anfeuchten, Abplatzer hindurch reiben, übrige Flüssigkeit abspülen</translation>
  </message>
  <message>
   <source>Tools and stowage</source>
   <translation>Werkzeug und Staugut</translation>
  </message>
  <message>
   <source>Sponge chips along edges</source>
   <translation>Abplatzer an den Kanten mit dem Schwamm</translation>
  </message>
  <message>
   <source>Gloss clear below the wash</source>
   <translation>Glanzlack unter dem Washing</translation>
  </message>
  <message>
   <source>Matte clear, so that the wash grips</source>
   <translation>Mattlack, damit das Washing haftet</translation>
  </message>
  <message>
   <source>Try the thinner on a hidden place; then the oil wash along edges and into recesses</source>
   <translation>Die Verdünnung an einer verdeckten Stelle probieren; dann die Ölwaschung entlang Kanten und in Vertiefungen</translation>
  </message>
  <message>
   <source>Wipe the wash back, in the direction of rain</source>
   <translation>Washing abnehmen, in Richtung des Regens</translation>
  </message>
  <message>
   <source>Gloss clear below the decals</source>
   <translation>Glanzlack unter den Abziehbildern</translation>
  </message>
  <message>
   <source>Gloss clear over the decals</source>
   <translation>Glanzlack über den Abziehbildern</translation>
  </message>
  <message>
   <source>Gloss clear below the filter</source>
   <translation>Glanzlack unter dem Filter</translation>
  </message>
  <message>
   <source>Gloss clear between wash and filter</source>
   <translation>Glanzlack zwischen Washing und Filter</translation>
  </message>
  <message>
   <source>Filter all over, hardly more than damp</source>
   <translation>Filter überall, kaum mehr als feucht</translation>
  </message>
  <message>
   <source>Rub graphite along edges that are worn to the metal</source>
   <translation>Graphit auf Kanten reiben, die bis aufs Metall abgenutzt sind</translation>
  </message>
  <message>
   <source>Dust and dry mud low down</source>
   <translation>Staub und trockener Schlamm unten herum</translation>
  </message>
  <message>
   <source>Let fixer creep into the pigments</source>
   <translation>Fixierer in die Pigmente kriechen lassen</translation>
  </message>
  <message>
   <source>Body colour, thin coats</source>
   <translation>Karosseriefarbe, dünne Schichten</translation>
  </message>
  <message>
   <source>Tyres and running gear</source>
   <translation>Reifen und Laufwerk</translation>
  </message>
  <message>
   <source>Trim, lamps and handles</source>
   <translation>Zierteile, Lampen und Griffe</translation>
  </message>
  <message>
   <source>Gloss clear, below decals and wash</source>
   <translation>Glanzlack unter Abziehbildern und Washing</translation>
  </message>
  <message>
   <source>Wash along the panel lines, wiped at once</source>
   <translation>Washing entlang der Blechstöße, sofort abgenommen</translation>
  </message>
  <message>
   <source>Scrape the joint faces and glue on wheels and whatever was painted apart</source>
   <translation>Klebeflächen blank schaben, Räder und alles getrennt Bemalte ankleben</translation>
  </message>
  <message>
   <source>Gloss clear as the last coat</source>
   <translation>Glanzlack als letzte Schicht</translation>
  </message>
  <message>
   <source>Satin clear as the last coat</source>
   <translation>Seidenmatter Klarlack als letzte Schicht</translation>
  </message>
  <message>
   <source>Gloss clear, to guard the colours</source>
   <translation>Glanzlack zum Schutz der Farben</translation>
  </message>
  <message>
   <source>Chipping fluid, two thin coats</source>
   <translation>Chipping-Flüssigkeit, zwei dünne Schichten</translation>
  </message>
  <message>
   <source>Whitewash, thin and uneven</source>
   <translation>Winterweiß, dünn und ungleichmäßig</translation>
  </message>
  <message>
   <source>Wet the white, wear it off where crew and weather would, rinse off leftover fluid</source>
   <translation>Weiß anfeuchten und abtragen, wo Mannschaft und Wetter es täten; übrige Flüssigkeit abspülen</translation>
  </message>
  <message>
   <source>Gloss clear over the worn white and the running gear</source>
   <translation>Glanzlack über das abgenutzte Weiß und das Laufwerk</translation>
  </message>
  <message>
   <source>Slush and earth low down</source>
   <translation>Matsch und Erde unten herum</translation>
  </message>
  <message>
   <source>White from above</source>
   <translation>Weiß von oben</translation>
  </message>
  <message>
   <source>Skin</source>
   <translation>Haut</translation>
  </message>
  <message>
   <source>Cloth</source>
   <translation>Stoff</translation>
  </message>
  <message>
   <source>Straps, boots and bags</source>
   <translation>Riemen, Stiefel und Taschen</translation>
  </message>
  <message>
   <source>Buckles and blades</source>
   <translation>Schnallen und Klingen</translation>
  </message>
  <message>
   <source>Ground on the base</source>
   <translation>Boden auf dem Sockel</translation>
  </message>
  <message>
   <source>Shading wash into folds</source>
   <translation>Schattierendes Washing in die Falten</translation>
  </message>
  <message>
   <source>Gloss clear below the oils</source>
   <translation>Glanzlack unter den Ölfarben</translation>
  </message>
  <message>
   <source>Highlights on folds, nose and knuckles</source>
   <translation>Lichter auf Falten, Nase und Fingerknöcheln</translation>
  </message>
  <message>
   <source>Scrape the joint faces and glue the figure to its base</source>
   <translation>Klebeflächen blank schaben und die Figur auf ihren Sockel kleben</translation>
  </message>
  <message>
   <source>Gloss on eyes and lips</source>
   <translation>Glanz auf Augen und Lippen</translation>
  </message>
  <message>
   <source>Main tone</source>
   <translation>Hauptton</translation>
  </message>
  <message>
   <source>Single stones and boards in a second tone</source>
   <translation>Einzelne Steine und Bretter in einem zweiten Ton</translation>
  </message>
  <message>
   <source>Dark wash into joints and cracks</source>
   <translation>Dunkles Washing in Fugen und Risse</translation>
  </message>
  <message>
   <source>Dry-brush the first light tone</source>
   <translation>Den ersten hellen Ton trockenmalen</translation>
  </message>
  <message>
   <source>Dry-brush edges with the last light tone</source>
   <translation>Kanten mit dem letzten hellen Ton trockenmalen</translation>
  </message>
  <message>
   <source>Moss low down and in the shade</source>
   <translation>Moos unten herum und im Schatten</translation>
  </message>
  <message>
   <source>Dust into corners</source>
   <translation>Staub in die Ecken</translation>
  </message>
 </context>
 <context>
  <name>tool</name>
  <message>
   <source>airbrush</source>
   <translation>Airbrush</translation>
  </message>
  <message>
   <source>brush</source>
   <translation>Pinsel</translation>
  </message>
  <message>
   <source>spray can</source>
   <translation>Sprühdose</translation>
  </message>
  <message>
   <source>sponge</source>
   <translation>Schwamm</translation>
  </message>
  <message>
   <source>cloth</source>
   <translation>Tuch</translation>
  </message>
  <message>
   <source>hand</source>
   <translation>Hand</translation>
  </message>
 </context>
 <context>
  <name>trait</name>
  <message>
   <source>noisy</source>
   <translation>laut</translation>
  </message>
  <message>
   <source>needs daylight</source>
   <translation>braucht Tageslicht</translation>
  </message>
  <message>
   <source>smells</source>
   <translation>riecht</translation>
  </message>
  <message>
   <source>all in one stretch</source>
   <translation>ganz in einer Sitzung</translation>
  </message>
  <message>
   <source>hands free</source>
   <translation>Hände frei</translation>
  </message>
  <message>
   <source>in any air</source>
   <translation>in jeder Luft</translation>
  </message>
 </context>
 <context>
  <name>trial</name>
  <message>
   <source>finger</source>
   <translation>Finger</translation>
  </message>
  <message>
   <source>thumb</source>
   <translation>Daumen</translation>
  </message>
  <message>
   <source>tape</source>
   <translation>Klebeband</translation>
  </message>
  <message>
   <source>rub</source>
   <translation>Abreiben</translation>
  </message>
 </context>
 <context>
  <name>verdict</name>
  <message>
   <source>sound</source>
   <translation>in Ordnung</translation>
  </message>
  <message>
   <source>wait</source>
   <translation>warten</translation>
  </message>
  <message>
   <source>advice</source>
   <translation>Rat</translation>
  </message>
  <message>
   <source>only after preparation</source>
   <translation>nur nach Vorbereitung</translation>
  </message>
  <message>
   <source>put in order</source>
   <translation>Reihenfolge ändern</translation>
  </message>
  <message>
   <source>barrier first</source>
   <translation>erst eine Sperrschicht</translation>
  </message>
  <message>
   <source>never</source>
   <translation>nie</translation>
  </message>
 </context>
 <context>
  <name>what_if</name>
  <message>
   <source>What if</source>
   <translation>Was wäre, wenn</translation>
  </message>
  <message>
   <source>Finished</source>
   <translation>Fertig</translation>
  </message>
  <message>
   <source>Evenings</source>
   <translation>Abende</translation>
  </message>
  <message>
   <source>Set-up</source>
   <translation>Rüsten</translation>
  </message>
  <message>
   <source>Late</source>
   <translation>Verspätet</translation>
  </message>
  <message>
   <source>No place</source>
   <translation>Ohne Platz</translation>
  </message>
  <message>
   <source>Unsound</source>
   <translation>Nicht in Ordnung</translation>
  </message>
  <message>
   <source>nothing</source>
   <translation>nichts</translation>
  </message>
  <message>
   <source>{minutes} min</source>
   <translation>{minutes} min</translation>
  </message>
  <message>
   <source>Finished {length} later.</source>
   <translation>Fertig {length} später.</translation>
  </message>
  <message>
   <source>Finished {length} sooner.</source>
   <translation>Fertig {length} früher.</translation>
  </message>
  <message>
   <source>Not everything would have a place.</source>
   <translation>Nicht alles hätte einen Platz.</translation>
  </message>
  <message>
   <source>The order of coats would not be sound.</source>
   <translation>Die Reihenfolge der Schichten wäre nicht in Ordnung.</translation>
  </message>
  <message>
   <source>First result; it may still get better.</source>
   <translation>Erstes Ergebnis; es kann noch besser werden.</translation>
  </message>
  <message>
   <source>{value} ({gap})</source>
   <translation>{value} ({gap})</translation>
  </message>
 </context>
 <context>
  <name>wishes</name>
  <message>
   <source>pinned to {day}</source>
   <translation>an {day} angeheftet</translation>
  </message>
  <message>
   <source>pinned to {day} {start}–{end}</source>
   <translation>an {day} {start}–{end} angeheftet</translation>
  </message>
  <message>
   <source>not before {day} {time}</source>
   <translation>nicht vor {day} {time}</translation>
  </message>
  <message>
   <source>together with {work}</source>
   <translation>zusammen mit {work}</translation>
  </message>
  <message>
   <source>{work}, coat {n}</source>
   <translation>{work}, Schicht {n}</translation>
  </message>
  <message>
   <source>not in the plan</source>
   <translation>nicht im Plan</translation>
  </message>
  <message>
   <source>kept</source>
   <translation>erfüllt</translation>
  </message>
  <message>
   <source>no longer possible; now a preference</source>
   <translation>nicht mehr möglich; nur noch ein Vorzug</translation>
  </message>
  <message>
   <source>Nothing late for its date</source>
   <translation>Nichts nach seinem Datum</translation>
  </message>
  <message>
   <source>All finished soon</source>
   <translation>Alles bald fertig</translation>
  </message>
  <message>
   <source>Few evenings at the bench</source>
   <translation>Wenige Abende am Basteltisch</translation>
  </message>
  <message>
   <source>Little loading and cleaning</source>
   <translation>Wenig Füllen und Reinigen</translation>
  </message>
  <message>
   <source>Little moved against the last plan</source>
   <translation>Wenig gegen den letzten Plan verschoben</translation>
  </message>
 </context>
 <context>
  <name>words</name>
  <message>
   <source>{low:g} to {high:g} {unit}</source>
   <translation>{low:g} bis {high:g} {unit}</translation>
  </message>
  <message>
   <source>Air from {file}</source>
   <translation>Luft aus {file}</translation>
  </message>
  <message>
   <source>Planning…</source>
   <translation>Wird geplant …</translation>
  </message>
  <message>
   <source>Wait</source>
   <translation>Warten</translation>
  </message>
  <message>
   <source>noted as a look: it sets the pace of this film</source>
   <translation>wird als Prüfung vermerkt: danach richtet sich dieser Film</translation>
  </message>
  <message>
   <source>it stands marked in timeline, logbook and record</source>
   <translation>es steht markiert in Zeitstrahl, Logbuch und Baubericht</translation>
  </message>
  <message>
   <source>{cause}.</source>
   <translation>{cause}.</translation>
  </message>
  <message>
   <source>{work} closes {time}, before the next bench time</source>
   <translation>{work} schließt {time}, vor der nächsten Bastelzeit</translation>
  </message>
  <message>
   <source>Before you go</source>
   <translation>Bevor Sie gehen</translation>
  </message>
  <message>
   <source>No project is planned: begin one on the page Tonight or Build.</source>
   <translation>Kein Projekt ist geplant: Beginnen Sie eines auf der Seite Heute Abend oder Bauplan.</translation>
  </message>
  <message>
   <source>The next bench time begins {time}.</source>
   <translation>Die nächste Bastelzeit beginnt {time}.</translation>
  </message>
  <message>
   <source>never in this air</source>
   <translation>nie in dieser Luft</translation>
  </message>
  <message>
   <source>{work} dries until {time}</source>
   <translation>{work} trocknet bis {time}</translation>
  </message>
  <message>
   <source>{job}: done.</source>
   <translation>{job}: fertig.</translation>
  </message>
  <message>
   <source>closing check</source>
   <translation>Schlusskontrolle</translation>
  </message>
  <message>
   <source>Taken back: {deed}.</source>
   <translation>Zurückgenommen: {deed}.</translation>
  </message>
  <message>
   <source>Take back?</source>
   <translation>Zurücknehmen?</translation>
  </message>
  <message>
   <source>take it back</source>
   <translation>zurücknehmen</translation>
  </message>
  <message>
   <source>no bench time</source>
   <translation>keine Bastelzeit</translation>
  </message>
  <message>
   <source>next {time}</source>
   <translation>die nächste {time}</translation>
  </message>
  <message>
   <source>{length} left</source>
   <translation>noch {length}</translation>
  </message>
  <message>
   <source>until {time}</source>
   <translation>bis {time}</translation>
  </message>
  <message>
   <source>As it should be</source>
   <translation>Wie es sein soll</translation>
  </message>
  <message>
   <source>Something is wrong</source>
   <translation>Etwas stimmt nicht</translation>
  </message>
  <message>
   <source>choose how to mend it</source>
   <translation>wählen, wie es behoben wird</translation>
  </message>
  <message>
   <source>Type what is to be seen</source>
   <translation>Eintippen, was zu sehen ist</translation>
  </message>
  <message>
   <source>Have a look</source>
   <translation>Nachsehen</translation>
  </message>
  <message>
   <source>What is to be seen?</source>
   <translation>Was ist zu sehen?</translation>
  </message>
  <message>
   <source>type, then Enter</source>
   <translation>tippen, dann Enter</translation>
  </message>
  <message>
   <source>{stage}, part {number} of {count}</source>
   <translation>{stage}, Teil {number} von {count}</translation>
  </message>
  <message>
   <source>{stage}, coat {coat}</source>
   <translation>{stage}, Schicht {coat}</translation>
  </message>
  <message>
   <source>Clean the airbrush</source>
   <translation>Airbrush reinigen</translation>
  </message>
  <message>
   <source>Prepare the film</source>
   <translation>Film vorbereiten</translation>
  </message>
  <message>
   <source>Change the colour</source>
   <translation>Farbe wechseln</translation>
  </message>
  <message>
   <source>Load the airbrush</source>
   <translation>Airbrush füllen</translation>
  </message>
  <message>
   <source>{work} · {about}</source>
   <translation>{work} · {about}</translation>
  </message>
  <message>
   <source>from {time}: {why}</source>
   <translation>ab {time}: {why}</translation>
  </message>
  <message>
   <source>{tool} · {length}</source>
   <translation>{tool} · {length}</translation>
  </message>
  <message>
   <source>{told} · begun {time}</source>
   <translation>{told} · begonnen {time}</translation>
  </message>
  <message>
   <source>{parts:g} × {coating}: {drops}</source>
   <translation>{parts:g} × {coating}: {drops}</translation>
  </message>
  <message>
   <source>about {ml:.1f} ml in all</source>
   <translation>zusammen etwa {ml:.1f} ml</translation>
  </message>
  <message>
   <source>at least {ml:.1f} ml: some places have no area</source>
   <translation>mindestens {ml:.1f} ml: Einige Stellen haben keine Fläche</translation>
  </message>
  <message>
   <source>{ml:.1f} ml: less does not spray</source>
   <translation>{ml:.1f} ml: Weniger lässt sich nicht sprühen</translation>
  </message>
  <message>
   <source>{whole}, in {n} fills of {each:.1f} ml; the drops are for one</source>
   <translation>{whole}, in {n} Füllungen zu {each:.1f} ml; die Tropfen gelten für eine</translation>
  </message>
  <message>
   <source>{drops}, {whole}</source>
   <translation>{drops}, {whole}</translation>
  </message>
  <message>
   <source>{n} drop</source>
   <translation>{n} Tropfen</translation>
  </message>
  <message>
   <source>{n} drops</source>
   <translation>{n} Tropfen</translation>
  </message>
  <message>
   <source>{airbrush} · {length}</source>
   <translation>{airbrush} · {length}</translation>
  </message>
  <message>
   <source>By hand</source>
   <translation>Von Hand</translation>
  </message>
  <message>
   <source>Not before {time}, or it would stand too long.</source>
   <translation>Nicht vor {time}, sonst stünde es zu lange.</translation>
  </message>
  <message>
   <source>before {work}</source>
   <translation>vor {work}</translation>
  </message>
  <message>
   <source>For</source>
   <translation>Für</translation>
  </message>
  <message>
   <source>and {n} more</source>
   <translation>und {n} weitere</translation>
  </message>
  <message>
   <source>What else takes this colour?</source>
   <translation>Was bekommt diese Farbe noch?</translation>
  </message>
  <message>
   <source>Nothing else in any project.</source>
   <translation>Nichts anderes in irgendeinem Projekt.</translation>
  </message>
  <message>
   <source>{when}: {work} ({parts})</source>
   <translation>{when}: {work} ({parts})</translation>
  </message>
  <message>
   <source>{done} of {count} places</source>
   <translation>{done} von {count} Stellen</translation>
  </message>
  <message>
   <source>{done} of 1 place</source>
   <translation>{done} von 1 Stelle</translation>
  </message>
  <message>
   <source>{told} · {more}</source>
   <translation>{told} · {more}</translation>
  </message>
  <message>
   <source>0: the other places</source>
   <translation>0: die anderen Stellen</translation>
  </message>
  <message>
   <source>begin</source>
   <translation>beginnen</translation>
  </message>
  <message>
   <source>done</source>
   <translation>fertig</translation>
  </message>
  <message>
   <source>tick</source>
   <translation>abhaken</translation>
  </message>
  <message>
   <source>still tacky</source>
   <translation>klebt noch</translation>
  </message>
  <message>
   <source>wrong</source>
   <translation>misslungen</translation>
  </message>
  <message>
   <source>not this one</source>
   <translation>nicht diese</translation>
  </message>
  <message>
   <source>window missed</source>
   <translation>verpasst</translation>
  </message>
  <message>
   <source>had a look</source>
   <translation>gesehen</translation>
  </message>
  <message>
   <source>another job</source>
   <translation>anderes</translation>
  </message>
  <message>
   <source>did something else</source>
   <translation>etwas anderes getan</translation>
  </message>
  <message>
   <source>note</source>
   <translation>Notiz</translation>
  </message>
  <message>
   <source>gauge</source>
   <translation>messen</translation>
  </message>
  <message>
   <source>browse</source>
   <translation>blättern</translation>
  </message>
  <message>
   <source>hour more</source>
   <translation>+ 1 Stunde</translation>
  </message>
  <message>
   <source>stop</source>
   <translation>Schluss</translation>
  </message>
  <message>
   <source>check</source>
   <translation>prüfen</translation>
  </message>
  <message>
   <source>finish the evening</source>
   <translation>Abend schließen</translation>
  </message>
  <message>
   <source>take back</source>
   <translation>zurück</translation>
  </message>
  <message>
   <source>leave</source>
   <translation>verlassen</translation>
  </message>
  <message>
   <source>all keys, or the usual five</source>
   <translation>alle Tasten oder die üblichen fünf</translation>
  </message>
  <message>
   <source>what the keys do</source>
   <translation>was die Tasten tun</translation>
  </message>
  <message>
   <source>Space</source>
   <translation>Leertaste</translation>
  </message>
  <message>
   <source>now</source>
   <translation>jetzt</translation>
  </message>
  <message>
   <source>not yet</source>
   <translation>noch nicht</translation>
  </message>
  <message>
   <source>it looks good without</source>
   <translation>es sieht ohne gut aus</translation>
  </message>
  <message>
   <source>there is no time for it</source>
   <translation>dafür ist keine Zeit</translation>
  </message>
  <message>
   <source>something for it is missing</source>
   <translation>etwas dafür fehlt</translation>
  </message>
  <message>
   <source>not wanted on this model</source>
   <translation>an diesem Modell nicht gewollt</translation>
  </message>
  <message>
   <source>Not tonight: plan it later</source>
   <translation>Nicht heute Abend: später planen</translation>
  </message>
  <message>
   <source>Leave it out: {why}</source>
   <translation>Weglassen: {why}</translation>
  </message>
  <message>
   <source>Leave it out: type why</source>
   <translation>Weglassen: Grund eintippen</translation>
  </message>
  <message>
   <source>Not this one</source>
   <translation>Diese nicht</translation>
  </message>
  <message>
   <source>Why leave it out?</source>
   <translation>Warum weglassen?</translation>
  </message>
  <message>
   <source>{film}, {model}</source>
   <translation>{film}, {model}</translation>
  </message>
  <message>
   <source>expected ready {time}</source>
   <translation>voraussichtlich bereit {time}</translation>
  </message>
  <message>
   <source>Nothing that was laid is waited for.</source>
   <translation>Auf nichts Aufgetragenes wird gewartet.</translation>
  </message>
  <message>
   <source>What is still tacky?</source>
   <translation>Was klebt noch?</translation>
  </message>
  <message>
   <source>The colour runs out: {coating}</source>
   <translation>Die Farbe geht aus: {coating}</translation>
  </message>
  <message>
   <source>what is ticked is done, the rest comes later</source>
   <translation>Abgehaktes ist fertig, der Rest kommt später</translation>
  </message>
  <message>
   <source>{work}, under way</source>
   <translation>{work}, in Arbeit</translation>
  </message>
  <message>
   <source>done {time}</source>
   <translation>fertig {time}</translation>
  </message>
  <message>
   <source>Nothing has been done yet.</source>
   <translation>Noch ist nichts getan.</translation>
  </message>
  <message>
   <source>What went wrong?</source>
   <translation>Was ist misslungen?</translation>
  </message>
  <message>
   <source>Dropped, or damaged</source>
   <translation>Heruntergefallen oder beschädigt</translation>
  </message>
  <message>
   <source>I do not like it</source>
   <translation>Es gefällt mir nicht</translation>
  </message>
  <message>
   <source>How did it go wrong?</source>
   <translation>Wie ist es misslungen?</translation>
  </message>
  <message>
   <source>Leave it as it is</source>
   <translation>So lassen</translation>
  </message>
  <message>
   <source>only noted in the logbook</source>
   <translation>nur im Logbuch notiert</translation>
  </message>
  <message>
   <source>What is done about it?</source>
   <translation>Was wird dagegen getan?</translation>
  </message>
  <message>
   <source>{event}, left as it is</source>
   <translation>{event}, so gelassen</translation>
  </message>
  <message>
   <source>All of it is done</source>
   <translation>Alles davon ist fertig</translation>
  </message>
  <message>
   <source>Only what is ticked; the rest comes later</source>
   <translation>Nur das Abgehakte; der Rest kommt später</translation>
  </message>
  <message>
   <source>{done} of {count} places are ticked.</source>
   <translation>{done} von {count} Stellen sind abgehakt.</translation>
  </message>
  <message>
   <source>Is all of it done?</source>
   <translation>Ist alles davon fertig?</translation>
  </message>
  <message>
   <source>Done before: {steps}.</source>
   <translation>Davor getan: {steps}.</translation>
  </message>
  <message>
   <source>Out of order</source>
   <translation>Außer der Reihe</translation>
  </message>
  <message>
   <source>Note</source>
   <translation>Notiz</translation>
  </message>
  <message>
   <source>What was painted, and on what?</source>
   <translation>Was wurde gemalt, und worauf?</translation>
  </message>
  <message>
   <source>Planned or not, as: {line}</source>
   <translation>Geplant oder nicht, etwa: {line}</translation>
  </message>
  <message>
   <source>What does the gauge show?</source>
   <translation>Was zeigt das Messgerät?</translation>
  </message>
  <message>
   <source>Temperature in °C and humidity in %, as 21.5 48</source>
   <translation>Temperatur in °C und Feuchte in %, als 21.5 48</translation>
  </message>
  <message>
   <source>{work}: its window closed {time}.</source>
   <translation>{work}: Das Fenster schloss {time}.</translation>
  </message>
  <message>
   <source>No window has been missed.</source>
   <translation>Kein Fenster wurde verpasst.</translation>
  </message>
  <message>
   <source>Window missed</source>
   <translation>Fenster verpasst</translation>
  </message>
  <message>
   <source>{n} steps, from {first} to {last}</source>
   <translation>{n} Schritte, von {first} bis {last}</translation>
  </message>
  <message>
   <source>Wait until it opens again</source>
   <translation>Warten, bis es sich wieder öffnet</translation>
  </message>
  <message>
   <source>Scuff, then go on</source>
   <translation>Anschleifen, dann weiter</translation>
  </message>
  <message>
   <source>Do it late, with more care and time</source>
   <translation>Verspätet tun, mit mehr Sorgfalt und Zeit</translation>
  </message>
  <message>
   <source>Leave it out</source>
   <translation>Weglassen</translation>
  </message>
  <message>
   <source>lay it once more</source>
   <translation>noch einmal auftragen</translation>
  </message>
  <message>
   <source>touch up</source>
   <translation>ausbessern</translation>
  </message>
  <message>
   <source>sand and respray</source>
   <translation>schleifen und neu sprühen</translation>
  </message>
  <message>
   <source>strip and start over</source>
   <translation>entlacken und neu beginnen</translation>
  </message>
  <message>
   <source>fix frosting</source>
   <translation>Weißschleier beheben</translation>
  </message>
  <message>
   <source>fix silvering</source>
   <translation>Silbern beheben</translation>
  </message>
  <message>
   <source>lift a tide mark</source>
   <translation>Trocknungsrand lösen</translation>
  </message>
  <message>
   <source>the book was changed elsewhere since; use the logbook or undo</source>
   <translation>das Buch wurde seither anderswo geändert; nehmen Sie das Logbuch oder „Rückgängig“</translation>
  </message>
  <message>
   <source>“{deed}” could not be taken back</source>
   <translation>„{deed}“ ließ sich nicht zurücknehmen</translation>
  </message>
  <message>
   <source>Ready for {work}?</source>
   <translation>Bereit für {work}?</translation>
  </message>
  <message>
   <source>What must follow it soon has no time left: leave it today.</source>
   <translation>Was bald darauf folgen muss, hat keine Zeit mehr: heute lassen.</translation>
  </message>
  <message>
   <source>Begin all the same?</source>
   <translation>Trotzdem beginnen?</translation>
  </message>
  <message>
   <source>it is ready: begin</source>
   <translation>es ist bereit: beginnen</translation>
  </message>
  <message>
   <source>Nothing else is ready in this session.</source>
   <translation>Nichts anderes ist in dieser Sitzung bereit.</translation>
  </message>
  <message>
   <source>Something else for now</source>
   <translation>Jetzt etwas anderes</translation>
  </message>
  <message>
   <source>Meanwhile you can (A):</source>
   <translation>Inzwischen geht (A):</translation>
  </message>
  <message>
   <source>Meanwhile:</source>
   <translation>Inzwischen:</translation>
  </message>
  <message>
   <source>Nothing else is ready until then; O notes what you do nevertheless.</source>
   <translation>Bis dahin ist nichts anderes bereit; O notiert, was Sie trotzdem tun.</translation>
  </message>
  <message>
   <source>At {time}: {job}</source>
   <translation>Um {time}: {job}</translation>
  </message>
  <message>
   <source>Bench time every week</source>
   <translation>Bastelzeit jede Woche</translation>
  </message>
  <message>
   <source>Quiet hours every week</source>
   <translation>Ruhezeiten jede Woche</translation>
  </message>
  <message>
   <source>Daylight every week</source>
   <translation>Tageslicht jede Woche</translation>
  </message>
  <message>
   <source>Away from the bench</source>
   <translation>Nicht am Basteltisch</translation>
  </message>
  <message>
   <source>One more session</source>
   <translation>Noch eine Sitzung</translation>
  </message>
  <message>
   <source>away</source>
   <translation>abwesend</translation>
  </message>
  <message>
   <source>{planned} of {whole} min</source>
   <translation>{planned} von {whole} min</translation>
  </message>
  <message>
   <source>{planned}/{whole}</source>
   <translation>{planned}/{whole}</translation>
  </message>
  <message>
   <source>{start}–{end}, {planned} min planned</source>
   <translation>{start}–{end}, {planned} min verplant</translation>
  </message>
  <message>
   <source>{day}: none</source>
   <translation>{day}: nichts</translation>
  </message>
  <message>
   <source>every day</source>
   <translation>jeden Tag</translation>
  </message>
  <message>
   <source>{minutes} min</source>
   <translation>{minutes} min</translation>
  </message>
  <message>
   <source>extra</source>
   <translation>zusätzlich</translation>
  </message>
  <message>
   <source>two people</source>
   <translation>zwei Personen</translation>
  </message>
  <message>
   <source>{time}  {why}</source>
   <translation>{time}  {why}</translation>
  </message>
  <message>
   <source>Try the drying card {time}: {coating}, {trial}</source>
   <translation>Trockenkarte prüfen {time}: {coating}, {trial}</translation>
  </message>
  <message>
   <source>{measure}: {buys}. It costs {cost}.</source>
   <translation>{measure}: {buys}. Das kostet: {cost}.</translation>
  </message>
  <message>
   <source>{planned}; four in five by {most}</source>
   <translation>{planned}; vier von fünf bis {most}</translation>
  </message>
  <message>
   <source>Have a look: {work}</source>
   <translation>Nachsehen: {work}</translation>
  </message>
  <message>
   <source>{model} may be handled</source>
   <translation>{model} darf angefasst werden</translation>
  </message>
  <message>
   <source>{steps} · {model}</source>
   <translation>{steps} · {model}</translation>
  </message>
  <message>
   <source>{work} may begin</source>
   <translation>{work} darf beginnen</translation>
  </message>
  <message>
   <source>{work} must have ended</source>
   <translation>{work} muss beendet sein</translation>
  </message>
  <message>
   <source>{work} must have begun</source>
   <translation>{work} muss begonnen sein</translation>
  </message>
  <message>
   <source>{step} ({parts})</source>
   <translation>{step} ({parts})</translation>
  </message>
  <message>
   <source>window closes</source>
   <translation>Fenster schließt</translation>
  </message>
  <message>
   <source>waited out</source>
   <translation>abgewartet</translation>
  </message>
  <message>
   <source>{what} by {time}: that window has closed.</source>
   <translation>{what} bis {time}: Dieses Fenster ist zu.</translation>
  </message>
  <message>
   <source>{what} by {time}.</source>
   <translation>{what} bis {time}.</translation>
  </message>
  <message>
   <source>{what} ({parts}): {sign}.</source>
   <translation>{what} ({parts}): {sign}.</translation>
  </message>
  <message>
   <source>{what}: {film} is {state}.</source>
   <translation>{what}: {film} ist {state}.</translation>
  </message>
  <message>
   <source>and {n} more, see Drying now</source>
   <translation>und {n} weitere, siehe „Trocknet jetzt“</translation>
  </message>
  <message>
   <source>Tackfree</source>
   <translation>Tackfree</translation>
  </message>
  <message>
   <source>Opens before {time}</source>
   <translation>Öffnet vor {time}</translation>
  </message>
  <message>
   <source>{work} ({parts})</source>
   <translation>{work} ({parts})</translation>
  </message>
  <message>
   <source>{state}, for “{work}”</source>
   <translation>{state}, für „{work}“</translation>
  </message>
  <message>
   <source>Still wet at {time}</source>
   <translation>Um {time} noch nass</translation>
  </message>
  <message>
   <source>{model} and {n} more</source>
   <translation>{model} und {n} weitere</translation>
  </message>
  <message>
   <source>never</source>
   <translation>nie</translation>
  </message>
  <message>
   <source>Closing</source>
   <translation>Schließt bald</translation>
  </message>
  <message>
   <source>end by {time}</source>
   <translation>zu beenden bis {time}</translation>
  </message>
  <message>
   <source>begin by {time}</source>
   <translation>zu beginnen bis {time}</translation>
  </message>
  <message>
   <source>not planned</source>
   <translation>nicht geplant</translation>
  </message>
  <message>
   <source>{model}: planned {time}; {why}</source>
   <translation>{model}: geplant {time}; {why}</translation>
  </message>
  <message>
   <source>Before the last coat</source>
   <translation>Vor der letzten Schicht</translation>
  </message>
  <message>
   <source>{time}, {work}</source>
   <translation>{time}, {work}</translation>
  </message>
  <message>
   <source>If something is not ready</source>
   <translation>Wenn etwas noch nicht so weit ist</translation>
  </message>
  <message>
   <source>If all goes well</source>
   <translation>Wenn alles gut geht</translation>
  </message>
  <message>
   <source>{day} these open:</source>
   <translation>{day} öffnen sich:</translation>
  </message>
  <message>
   <source>{stage} × {n}</source>
   <translation>{stage} × {n}</translation>
  </message>
  <message>
   <source>Finished</source>
   <translation>Fertig</translation>
  </message>
  <message>
   <source>{work} has no place: {why}</source>
   <translation>{work} hat keinen Platz: {why}</translation>
  </message>
  <message>
   <source>not done; without a place: {n}</source>
   <translation>nicht fertig; ohne Platz: {n}</translation>
  </message>
  <message>
   <source>done {time}, no date set</source>
   <translation>fertig {time}, kein Datum gesetzt</translation>
  </message>
  <message>
   <source>done {time}, {length} too late for {date}</source>
   <translation>fertig {time}, {length} zu spät für {date}</translation>
  </message>
  <message>
   <source>done {time}, {length} in hand before {date} ends</source>
   <translation>fertig {time}, {length} Reserve bis zum Ende von {date}</translation>
  </message>
  <message>
   <source>It is too late for this: go on all the same?</source>
   <translation>Dafür ist es zu spät: trotzdem weiter?</translation>
  </message>
  <message>
   <source>Was it done over a film that was not ready?</source>
   <translation>Geschah das über einem Film, der nicht bereit war?</translation>
  </message>
  <message>
   <source>The film below is not ready: begin all the same?</source>
   <translation>Der Film darunter ist nicht bereit: trotzdem beginnen?</translation>
  </message>
  <message>
   <source>The risk: {risk}.</source>
   <translation>Das Risiko: {risk}.</translation>
  </message>
  <message>
   <source>{film}: its window closed {time}.</source>
   <translation>{film}: das Fenster schloss sich {time}.</translation>
  </message>
  <message>
   <source>It opens again {time}.</source>
   <translation>Es öffnet sich wieder {time}.</translation>
  </message>
  <message>
   <source>{film} is still under way.</source>
   <translation>{film} ist noch im Gang.</translation>
  </message>
  <message>
   <source>ready</source>
   <translation>bereit</translation>
  </message>
  <message>
   <source>{film} never gets {state} in this air.</source>
   <translation>{film} wird in dieser Luft nie {state}.</translation>
  </message>
  <message>
   <source>{film} was {state} only {time}.</source>
   <translation>{film} war erst {time} {state}.</translation>
  </message>
  <message>
   <source>{film} will be {state} {time}, {length} from now.</source>
   <translation>{film} ist {time} {state}, in {length}.</translation>
  </message>
  <message>
   <source>Note it all the same</source>
   <translation>Trotzdem vermerken</translation>
  </message>
  <message>
   <source>Begin all the same</source>
   <translation>Trotzdem beginnen</translation>
  </message>
  <message>
   <source>I waited and it is dry</source>
   <translation>Ich habe gewartet, er ist trocken</translation>
  </message>
  <message>
   <source>{coating} on {parts} ({work})</source>
   <translation>{coating} auf {parts} ({work})</translation>
  </message>
  <message>
   <source>wet</source>
   <translation>nass</translation>
  </message>
  <message>
   <source>sticky</source>
   <translation>klebrig</translation>
  </message>
  <message>
   <source>touch-dry</source>
   <translation>griffest</translation>
  </message>
  <message>
   <source>hard, can be held</source>
   <translation>hart, lässt sich anfassen</translation>
  </message>
  <message>
   <source>{work} ({length})</source>
   <translation>{work} ({length})</translation>
  </message>
  <message>
   <source>a dry fit before {work} ({length})</source>
   <translation>trocken anpassen vor {work} ({length})</translation>
  </message>
  <message>
   <source>cut the decals for {work} ({length})</source>
   <translation>Decals ausschneiden für {work} ({length})</translation>
  </message>
  <message>
   <source>{work} at the price of one more cleaning ({length})</source>
   <translation>{work}, zum Preis einer Reinigung mehr ({length})</translation>
  </message>
  <message>
   <source>{length} earlier than planned</source>
   <translation>{length} früher als geplant</translation>
  </message>
  <message>
   <source>{length} free, {time}</source>
   <translation>{length} frei, {time}</translation>
  </message>
  <message>
   <source>{length} free: {offers}</source>
   <translation>{length} frei: {offers}</translation>
  </message>
  <message>
   <source>on</source>
   <translation>auf</translation>
  </message>
  <message>
   <source>steel on Gannet hull, Heron, brush, 15 min</source>
   <translation>Stahl auf Gannet hull, Heron, Pinsel, 15 min</translation>
  </message>
  <message>
   <source>{model} ({parts})</source>
   <translation>{model} ({parts})</translation>
  </message>
  <message>
   <source>{ml:g} ml</source>
   <translation>{ml:g} ml</translation>
  </message>
  <message>
   <source>{coating} on {on}</source>
   <translation>{coating} auf {on}</translation>
  </message>
  <message>
   <source>Understood: {told}</source>
   <translation>Verstanden: {told}</translation>
  </message>
  <message>
   <source>{day}, {start}–{end}</source>
   <translation>{day}, {start}–{end}</translation>
  </message>
  <message>
   <source>{name}, two people</source>
   <translation>{name}, zwei Personen</translation>
  </message>
  <message>
   <source>{file}: the program's log says what went wrong</source>
   <translation>{file}: Das Protokoll des Programms sagt, was schiefging</translation>
  </message>
  <message>
   <source>how much is not known, for its places have no area</source>
   <translation>wie viel, ist nicht bekannt, denn die Stellen haben keine Fläche</translation>
  </message>
  <message>
   <source>mix {ml:.1f} ml: {drops}</source>
   <translation>{ml:.1f} ml mischen: {drops}</translation>
  </message>
  <message>
   <source>{drops} {coating}</source>
   <translation>{drops} {coating}</translation>
  </message>
  <message>
   <source>fill in {ml:.1f} ml, {drops}</source>
   <translation>{ml:.1f} ml einfüllen, {drops}</translation>
  </message>
  <message>
   <source>put out {ml:.1f} ml, {drops}</source>
   <translation>{ml:.1f} ml bereitstellen, {drops}</translation>
  </message>
  <message>
   <source>{ml:.1f} ml in {n} fills of {each:.1f} ml, each {drops}</source>
   <translation>{ml:.1f} ml in {n} Füllungen zu {each:.1f} ml, je {drops}</translation>
  </message>
  <message>
   <source>{told} (less does not spray)</source>
   <translation>{told} (weniger lässt sich nicht sprühen)</translation>
  </message>
  <message>
   <source>{told}; more, for some places have no area</source>
   <translation>{told}; mehr, denn einige Stellen haben keine Fläche</translation>
  </message>
  <message>
   <source>{told}; it keeps for {life}, and is needed for {span}: mix less, twice</source>
   <translation>{told}; es hält {life} und wird {span} gebraucht: Mischen Sie weniger, zweimal</translation>
  </message>
  <message>
   <source>{ml:.1f} ml</source>
   <translation>{ml:.1f} ml</translation>
  </message>
  <message>
   <source>over {ml:.1f} ml</source>
   <translation>über {ml:.1f} ml</translation>
  </message>
  <message>
   <source>{ml:.1f} ml in {n} fills</source>
   <translation>{ml:.1f} ml in {n} Füllungen</translation>
  </message>
  <message>
   <source>amount not known: its places have no area</source>
   <translation>Menge unbekannt: Die Stellen haben keine Fläche</translation>
  </message>
  <message>
   <source>each fill {ml:.1f} ml, {drops}</source>
   <translation>je Füllung {ml:.1f} ml, {drops}</translation>
  </message>
  <message>
   <source>less does not spray</source>
   <translation>weniger lässt sich nicht spritzen</translation>
  </message>
  <message>
   <source>more, for some places have no area</source>
   <translation>mehr, denn manche Stellen haben keine Fläche</translation>
  </message>
  <message>
   <source>keeps for {life}, needed for {span}: mix less, twice</source>
   <translation>hält {life}, gebraucht {span}: weniger mischen, zweimal</translation>
  </message>
  <message>
   <source>{name}, {ml:g} ml</source>
   <translation>{name}, {ml:g} ml</translation>
  </message>
  <message>
   <source>no book is open</source>
   <translation>kein Buch ist geöffnet</translation>
  </message>
  <message>
   <source>The book has not taken it; the foot of the window says why. Keep it again.</source>
   <translation>Das Buch hat es nicht angenommen; warum, steht unten im Fenster. Behalten Sie es noch einmal.</translation>
  </message>
  <message>
   <source>Coating in the mix</source>
   <translation>Mittel in der Mischung</translation>
  </message>
  <message>
   <source> drops</source>
   <translation> Tropfen</translation>
  </message>
  <message>
   <source> parts</source>
   <translation> Teile</translation>
  </message>
  <message>
   <source>How much of it</source>
   <translation>Wie viel davon</translation>
  </message>
  <message>
   <source>“{typed}” cannot be read; write it like {example}</source>
   <translation>„{typed}“ ist nicht zu lesen; schreiben Sie es wie {example}</translation>
  </message>
  <message>
   <source>Calendar</source>
   <translation>Kalender</translation>
  </message>
  <message>
   <source>Airbrush</source>
   <translation>Airbrush</translation>
  </message>
  <message>
   <source>Another airbrush</source>
   <translation>Noch eine Airbrush</translation>
  </message>
  <message>
   <source>Where films dry</source>
   <translation>Wo Filme trocknen</translation>
  </message>
  <message>
   <source>Another place where films dry</source>
   <translation>Noch ein Ort, an dem Filme trocknen</translation>
  </message>
  <message>
   <source>Time of day</source>
   <translation>Uhrzeit</translation>
  </message>
  <message>
   <source> °C</source>
   <translation> °C</translation>
  </message>
  <message>
   <source>Temperature at this time</source>
   <translation>Temperatur zu dieser Zeit</translation>
  </message>
  <message>
   <source> % RH</source>
   <translation> % r. F.</translation>
  </message>
  <message>
   <source>Humidity at this time</source>
   <translation>Feuchte zu dieser Zeit</translation>
  </message>
  <message>
   <source>Remove this point</source>
   <translation>Diesen Punkt entfernen</translation>
  </message>
  <message>
   <source>{temperatures} °C, {humidities} % RH</source>
   <translation>{temperatures} °C, {humidities} % r. F.</translation>
  </message>
  <message>
   <source>{amount:.1f} ml</source>
   <translation>{amount:.1f} ml</translation>
  </message>
  <message>
   <source>A first thin coat that grips the bare part and gives colours a ground.</source>
   <translation>Eine erste dünne Schicht, die auf dem blanken Teil haftet und den Farben einen Grund gibt.</translation>
  </message>
  <message>
   <source>The main colour, wherever it shows.</source>
   <translation>Die Hauptfarbe, wo immer sie zu sehen ist.</translation>
  </message>
  <message>
   <source>Further colours of a scheme, over the base.</source>
   <translation>Weitere Farben eines Anstrichs, über der Grundfarbe.</translation>
  </message>
  <message>
   <source>A lighter shade on what faces the light.</source>
   <translation>Ein hellerer Ton auf dem, was zum Licht zeigt.</translation>
  </message>
  <message>
   <source>Small parts in colours of their own, mostly by brush.</source>
   <translation>Kleine Teile in eigenen Farben, meist mit dem Pinsel.</translation>
  </message>
  <message>
   <source>A brush with hardly any paint is drawn over edges, which take it.</source>
   <translation>Ein fast trockener Pinsel streift über Kanten, die die Farbe annehmen.</translation>
  </message>
  <message>
   <source>Thin dark paint that runs into recesses and shows them.</source>
   <translation>Dünne dunkle Farbe, die in Vertiefungen läuft und sie zeigt.</translation>
  </message>
  <message>
   <source>A wash of oil or enamel paint; it stays open and is wiped back.</source>
   <translation>Ein Washing aus Öl- oder Emailfarbe; es bleibt offen und wird abgewischt.</translation>
  </message>
  <message>
   <source>Taking a wash off the raised faces while it can still be wiped.</source>
   <translation>Ein Washing von den erhabenen Flächen nehmen, solange es sich wischen lässt.</translation>
  </message>
  <message>
   <source>A very thin tint over all, which draws the colours together.</source>
   <translation>Eine sehr dünne Tönung über allem, die die Farben zusammenzieht.</translation>
  </message>
  <message>
   <source>A clear coat: a bed for decals, a seal, a barrier, or the last coat.</source>
   <translation>Ein Klarlack: Bett für Abziehbilder, Versiegelung, Sperrschicht oder letzte Schicht.</translation>
  </message>
  <message>
   <source>Markings that are soaked off their paper and slid into place.</source>
   <translation>Markierungen, die vom Papier gelöst und an ihren Platz geschoben werden.</translation>
  </message>
  <message>
   <source>Pressing decals down while the setting fluid softens them.</source>
   <translation>Abziehbilder andrücken, während der Weichmacher sie erweicht.</translation>
  </message>
  <message>
   <source>Painted chips, dabbed on by sponge or fine brush.</source>
   <translation>Gemalte Abplatzer, mit Schwamm oder feinem Pinsel getupft.</translation>
  </message>
  <message>
   <source>A film that water dissolves, below the colour that is to be chipped.</source>
   <translation>Ein Film, den Wasser löst, unter der Farbe, die abplatzen soll.</translation>
  </message>
  <message>
   <source>Rubbing the colour over the fluid off with water, soon after.</source>
   <translation>Die Farbe über dem Film bald danach mit Wasser abreiben.</translation>
  </message>
  <message>
   <source>Dry powder for dust, rust and mud; it lies loose unless it is fixed.</source>
   <translation>Trockenes Pulver für Staub, Rost und Schlamm; es liegt lose, wenn es nicht fixiert wird.</translation>
  </message>
  <message>
   <source>Traces of use and weather: streaks, dust, mud.</source>
   <translation>Spuren von Gebrauch und Wetter: Schlieren, Staub, Schlamm.</translation>
  </message>
  <message>
   <source>Covering places with tape or fluid, so that a colour ends at an edge.</source>
   <translation>Stellen mit Band oder Flüssigkeit abdecken, damit eine Farbe an einer Kante endet.</translation>
  </message>
  <message>
   <source>Taking the mask off, early enough to leave a clean edge.</source>
   <translation>Die Maske abnehmen, früh genug für eine saubere Kante.</translation>
  </message>
  <message>
   <source>Turning a part over, to reach its other side.</source>
   <translation>Ein Teil umdrehen, um an die andere Seite zu kommen.</translation>
  </message>
  <message>
   <source>Gluing together what was painted apart.</source>
   <translation>Zusammenkleben, was getrennt bemalt wurde.</translation>
  </message>
  <message>
   <source>Washing, dusting, sanding, trying for fit: work that lays no film.</source>
   <translation>Waschen, abstauben, schleifen, anpassen: Arbeit, die keinen Film hinterlässt.</translation>
  </message>
  <message>
   <source>The last clear coat, which takes the shine off.</source>
   <translation>Der letzte Klarlack, der den Glanz nimmt.</translation>
  </message>
  <message>
   <source>Sticky still, but nothing comes off on the finger.</source>
   <translation>Noch klebrig, aber am Finger bleibt nichts.</translation>
  </message>
  <message>
   <source>Dust that settles can be blown off.</source>
   <translation>Staub, der sich legt, lässt sich abblasen.</translation>
  </message>
  <message>
   <source>It does not feel sticky any more.</source>
   <translation>Es fühlt sich nicht mehr klebrig an.</translation>
  </message>
  <message>
   <source>It can be held without leaving a mark.</source>
   <translation>Man kann es anfassen, ohne eine Spur zu hinterlassen.</translation>
  </message>
  <message>
   <source>The next coat may follow.</source>
   <translation>Die nächste Schicht darf folgen.</translation>
  </message>
  <message>
   <source>What lies on it leaves no print: tape may.</source>
   <translation>Was darauf liegt, hinterlässt keinen Abdruck: Klebeband darf.</translation>
  </message>
  <message>
   <source>White spirit may be brushed and wiped over it.</source>
   <translation>Terpentinersatz darf darüber gestrichen und gewischt werden.</translation>
  </message>
  <message>
   <source>Firm to the ground: a thumb that presses and turns moves nothing.</source>
   <translation>Fest bis zum Grund: Ein Daumen, der drückt und dreht, bewegt nichts.</translation>
  </message>
  <message>
   <source>Smooth gloss, on which decals lie without trapped air.</source>
   <translation>Glatter Glanz, auf dem Abziehbilder ohne Luft darunter liegen.</translation>
  </message>
  <message>
   <source>Keeps decals or paint from what comes next.</source>
   <translation>Schützt Abziehbilder oder Farbe vor dem, was folgt.</translation>
  </message>
  <message>
   <source>Parts two layers of which the upper would attack the lower.</source>
   <translation>Trennt zwei Schichten, deren obere die untere angreifen würde.</translation>
  </message>
  <message>
   <source>The last coat, which gives everything one sheen.</source>
   <translation>Die letzte Schicht, die allem einen Glanz gibt.</translation>
  </message>
  <message>
   <source>bench book</source>
   <translation>Werkbuch</translation>
  </message>
  <message>
   <source>All that you have and do, in one file.</source>
   <translation>Alles, was Sie haben und tun, in einer Datei.</translation>
  </message>
  <message>
   <source>place</source>
   <translation>Stelle</translation>
  </message>
  <message>
   <source>An area of a part with a stack of coats of its own.</source>
   <translation>Eine Fläche eines Teils mit eigenem Schichtaufbau.</translation>
  </message>
  <message>
   <source>gate</source>
   <translation>Bedingung</translation>
  </message>
  <message>
   <source>What must hold between two pieces of work: a wait, or a time limit.</source>
   <translation>Was zwischen zwei Arbeiten gelten muss: eine Wartezeit oder eine Frist.</translation>
  </message>
  <message>
   <source>session</source>
   <translation>Sitzung</translation>
  </message>
  <message>
   <source>One unbroken time at the bench.</source>
   <translation>Eine ununterbrochene Zeit am Basteltisch.</translation>
  </message>
  <message>
   <source>load</source>
   <translation>Füllung</translation>
  </message>
  <message>
   <source>One filling of an airbrush.</source>
   <translation>Eine Füllung einer Airbrush.</translation>
  </message>
  <message>
   <source>wish</source>
   <translation>Wunsch</translation>
  </message>
  <message>
   <source>Where you want a piece of work to be; the plan keeps to it.</source>
   <translation>Wo Sie eine Arbeit haben wollen; der Plan hält sich daran.</translation>
  </message>
  <message>
   <source>sequence</source>
   <translation>Ablauf</translation>
  </message>
  <message>
   <source>A finishing order with options, to be given to any model.</source>
   <translation>Eine Reihenfolge der Schritte mit Optionen, für jedes Modell zu haben.</translation>
  </message>
  <message>
   <source>can wait</source>
   <translation>kann warten</translation>
  </message>
  <message>
   <source>How long a step may be put off without a later end.</source>
   <translation>Wie lange ein Schritt aufgeschoben werden kann, ohne dass das Ende später wird.</translation>
  </message>
  <message>
   <source>Keys</source>
   <translation>Tasten</translation>
  </message>
  <message>
   <source>Shift+F1 shows every key.</source>
   <translation>Umschalt+F1 zeigt alle Tasten.</translation>
  </message>
  <message>
   <source>One piece of work at a time. A tile is a place: its number ticks it; Space notes the whole job.</source>
   <translation>Eine Arbeit nach der anderen. Eine Kachel ist eine Stelle: ihre Nummer hakt sie ab; die Leertaste trägt die ganze Arbeit ein.</translation>
  </message>
  <message>
   <source>Bench mode</source>
   <translation>Basteltisch-Ansicht</translation>
  </message>
  <message>
   <source>Words</source>
   <translation>Wörter</translation>
  </message>
  <message>
   <source>not installed</source>
   <translation>nicht installiert</translation>
  </message>
  <message>
   <source>Version {version}, MIT licence.</source>
   <translation>Version {version}, MIT-Lizenz.</translation>
  </message>
  <message>
   <source>Plans the finishing of scale models: sound coats, short evenings, one date. Waiting times are computed from the air of your room and from labels or family defaults; they are estimates, and a test piece knows better.</source>
   <translation>Plant die Bemalung maßstäblicher Modelle: saubere Schichten, kurze Abende, ein Datum. Wartezeiten werden aus der Luft Ihres Raums und aus Etiketten oder den Werten der Familie berechnet; sie sind Schätzungen, und ein Probestück weiß es besser.</translation>
  </message>
  <message>
   <source>The label, the safety data sheet and local rules have the last word.</source>
   <translation>Das letzte Wort haben das Etikett, das Sicherheitsdatenblatt und die örtlichen Vorschriften.</translation>
  </message>
  <message>
   <source>Colours after Okabe and Ito, “Color Universal Design” (2008).</source>
   <translation>Farben nach Okabe und Ito, „Color Universal Design“ (2008).</translation>
  </message>
  <message>
   <source>About Tackfree</source>
   <translation>Über Tackfree</translation>
  </message>
  <message>
   <source>{time} sooner</source>
   <translation>{time} früher</translation>
  </message>
  <message>
   <source>one session fewer</source>
   <translation>eine Sitzung weniger</translation>
  </message>
  <message>
   <source>{n} sessions fewer</source>
   <translation>{n} Sitzungen weniger</translation>
  </message>
  <message>
   <source>{n} min less set-up</source>
   <translation>{n} min weniger Rüsten</translation>
  </message>
  <message>
   <source>less late, or nearer to the last plan</source>
   <translation>weniger verspätet oder näher am letzten Plan</translation>
  </message>
  <message>
   <source>What moved</source>
   <translation>Was sich verschoben hat</translation>
  </message>
  <message>
   <source>Drying now</source>
   <translation>Trocknet jetzt</translation>
  </message>
  <message>
   <source>Piece</source>
   <translation>Stück</translation>
  </message>
  <message>
   <source>How sure</source>
   <translation>Wie sicher</translation>
  </message>
  <message>
   <source>Moved</source>
   <translation>Verschoben</translation>
  </message>
  <message>
   <source>Air and evenings</source>
   <translation>Luft und Abende</translation>
  </message>
  <message>
   <source>{day} {time}</source>
   <translation>{day} {time}</translation>
  </message>
  <message>
   <source>ddd d MMM yy HH:mm</source>
   <translation>ddd d. MMM yy HH:mm</translation>
  </message>
  <message>
   <source>{stage}, {tool}</source>
   <translation>{stage}, {tool}</translation>
  </message>
  <message>
   <source>{passes}: planned {planned} min, worked {worked} min; likely {range}</source>
   <translation>{passes}: geplant {planned} min, gearbeitet {worked} min; wahrscheinlich {range}</translation>
  </message>
  <message>
   <source>{n} pass</source>
   <translation>{n} Schicht</translation>
  </message>
  <message>
   <source>{n} passes</source>
   <translation>{n} Schichten</translation>
  </message>
  <message>
   <source>; {percent} % applied before</source>
   <translation>; {percent} % schon angewandt</translation>
  </message>
  <message>
   <source>{looks}: likely {range} of the stated times; reckoned with {now} %</source>
   <translation>{looks}: wahrscheinlich {range} der angegebenen Zeiten; gerechnet mit {now} %</translation>
  </message>
  <message>
   <source>{n} look</source>
   <translation>{n} Blick</translation>
  </message>
  <message>
   <source>{n} looks</source>
   <translation>{n} Blicke</translation>
  </message>
  <message>
   <source>{percent} % ({low}–{high} %)</source>
   <translation>{percent} % ({low}–{high} %)</translation>
  </message>
  <message>
   <source>{range}, not sure yet</source>
   <translation>{range}, noch nicht sicher</translation>
  </message>
  <message>
   <source>{airbrush} cleaned</source>
   <translation>{airbrush} gereinigt</translation>
  </message>
  <message>
   <source>{event}: {about}</source>
   <translation>{event}: {about}</translation>
  </message>
  <message>
   <source>{work}: looked at, {state}</source>
   <translation>{work}: nachgesehen, {state}</translation>
  </message>
  <message>
   <source>{work}: looked at, not yet {state}</source>
   <translation>{work}: nachgesehen, noch nicht {state}</translation>
  </message>
  <message>
   <source>{work}, coat {n}</source>
   <translation>{work}, Schicht {n}</translation>
  </message>
  <message>
   <source>skipped</source>
   <translation>weggelassen</translation>
  </message>
  <message>
   <source>dropped</source>
   <translation>heruntergefallen</translation>
  </message>
  <message>
   <source>disliked</source>
   <translation>missfällt</translation>
  </message>
  <message>
   <source>ran out</source>
   <translation>ausgegangen</translation>
  </message>
  <message>
   <source>stopped early</source>
   <translation>früher aufgehört</translation>
  </message>
  <message>
   <source>over a film not ready</source>
   <translation>über einem Film, der nicht bereit war</translation>
  </message>
  <message>
   <source>after its window</source>
   <translation>nach seinem Fenster</translation>
  </message>
  <message>
   <source>{minutes} ({planned} planned)</source>
   <translation>{minutes} ({planned} geplant)</translation>
  </message>
  <message>
   <source>{humidity:.0f} % RH</source>
   <translation>{humidity:.0f} % r. F.</translation>
  </message>
  <message>
   <source>{coating} {ml:.1f} ml</source>
   <translation>{coating} {ml:.1f} ml</translation>
  </message>
  <message>
   <source>project</source>
   <translation>Projekt</translation>
  </message>
  <message>
   <source>coating</source>
   <translation>Mittel</translation>
  </message>
  <message>
   <source>mix</source>
   <translation>Mischung</translation>
  </message>
  <message>
   <source>keep yours</source>
   <translation>Ihres behalten</translation>
  </message>
  <message>
   <source>take the file's</source>
   <translation>das der Datei nehmen</translation>
  </message>
  <message>
   <source>take it beside</source>
   <translation>danebenstellen</translation>
  </message>
  <message>
   <source>take it beside as “{name}”</source>
   <translation>als „{name}“ danebenstellen</translation>
  </message>
  <message>
   <source>{name}: done {time}, {length} too late for {date}</source>
   <translation>{name}: fertig {time}, {length} zu spät für {date}</translation>
  </message>
  <message>
   <source>Paint another like this</source>
   <translation>Noch eins so bemalen</translation>
  </message>
  <message>
   <source>Change the order</source>
   <translation>Ablauf ändern</translation>
  </message>
  <message>
   <source>How far they are</source>
   <translation>Wie weit sie sind</translation>
  </message>
  <message>
   <source>More vehicles</source>
   <translation>Weitere Fahrzeuge</translation>
  </message>
  <message>
   <source>part</source>
   <translation>Teil</translation>
  </message>
  <message>
   <source>“{step}” joins it with {others}.</source>
   <translation>„{step}“ verbindet es mit {others}.</translation>
  </message>
  <message>
   <source>It stays apart: no step joins it.</source>
   <translation>Es bleibt getrennt: Kein Schritt verbindet es.</translation>
  </message>
  <message>
   <source>{n} model</source>
   <translation>{n} Modell</translation>
  </message>
  <message>
   <source>{n} models</source>
   <translation>{n} Modelle</translation>
  </message>
  <message>
   <source>{models}, set aside</source>
   <translation>{models}, beiseitegelegt</translation>
  </message>
  <message>
   <source>{n} part</source>
   <translation>{n} Teil</translation>
  </message>
  <message>
   <source>{n} parts</source>
   <translation>{n} Teile</translation>
  </message>
  <message>
   <source>Parts and places</source>
   <translation>Teile und Stellen</translation>
  </message>
  <message>
   <source>{n} step</source>
   <translation>{n} Schritt</translation>
  </message>
  <message>
   <source>{n} steps</source>
   <translation>{n} Schritte</translation>
  </message>
  <message>
   <source>held by: {holder}</source>
   <translation>gehalten von: {holder}</translation>
  </message>
  <message>
   <source>snaps in under stress</source>
   <translation>rastet unter Spannung ein</translation>
  </message>
  <message>
   <source>underside</source>
   <translation>Unterseite</translation>
  </message>
  <message>
   <source>{area:g} cm²</source>
   <translation>{area:g} cm²</translation>
  </message>
  <message>
   <source>{coats} × {minutes}</source>
   <translation>{coats} × {minutes}</translation>
  </message>
  <message>
   <source>sets the end</source>
   <translation>bestimmt das Ende</translation>
  </message>
  <message>
   <source>{done} of 1 step done</source>
   <translation>{done} von 1 Schritt erledigt</translation>
  </message>
  <message>
   <source>{done} of {count} steps done</source>
   <translation>{done} von {count} Schritten erledigt</translation>
  </message>
  <message>
   <source>{day}: {works}, now without a place.</source>
   <translation>{day}: {works}, jetzt ohne Platz.</translation>
  </message>
  <message>
   <source>{day}: {works}, without a place before.</source>
   <translation>{day}: {works}, vorher ohne Platz.</translation>
  </message>
  <message>
   <source>{day}: {works}, now {after}.</source>
   <translation>{day}: {works}, jetzt {after}.</translation>
  </message>
  <message>
   <source>{n} more</source>
   <translation>{n} weitere</translation>
  </message>
  <message>
   <source>{work} of {model}</source>
   <translation>{work} an {model}</translation>
  </message>
  <message>
   <source>The end stays {day}.</source>
   <translation>Fertig bleibt es {day}.</translation>
  </message>
  <message>
   <source>The end is {day}; it was {before}.</source>
   <translation>Fertig ist es {day}; vorher {before}.</translation>
  </message>
  <message>
   <source>opening failed; the program's log says where</source>
   <translation>Das Öffnen ist gescheitert; das Protokoll des Programms sagt, wo</translation>
  </message>
  <message>
   <source>No copy of the book was made: {why}</source>
   <translation>Vom Buch wurde keine Kopie angelegt: {why}</translation>
  </message>
  <message>
   <source>What to do in this session, in order, with mixes and places to tick. Beside it stands what dries meanwhile and what closes soon.</source>
   <translation>Was in dieser Sitzung zu tun ist, der Reihe nach, mit Mischungen und Stellen zum Abhaken. Daneben steht, was inzwischen trocknet und was bald schließt.</translation>
  </message>
  <message>
   <source>The whole plan: sessions at the bench are wide, the hours between narrow. Choose a piece to see why it stands there; drag it to wish it elsewhere.</source>
   <translation>Der ganze Plan: Sitzungen am Basteltisch sind breit, die Stunden dazwischen schmal. Wählen Sie eine Arbeit, um zu sehen, warum sie dort steht; ziehen Sie sie, um sie woanders zu wünschen.</translation>
  </message>
  <message>
   <source>How long each coating takes in the air of a place, and how its film comes on. F3 changes the air; a reading counts for the rest of the day.</source>
   <translation>Wie lange jede Farbe in der Luft eines Ortes braucht und wie ihr Film vorankommt. F3 ändert die Luft; eine Ablesung gilt für den Rest des Tages.</translation>
  </message>
  <message>
   <source>Every film on one place, from the bare part up, and what is thought of each on the one below. A finding says how it can be mended.</source>
   <translation>Jeder Film auf einer Stelle, vom blanken Teil aufwärts, und was von jedem auf dem darunter zu halten ist. Ein Befund sagt, wie er zu beheben ist.</translation>
  </message>
  <message>
   <source>Models, parts, places and steps. Choose one line to change it, several steps to change them at once; drag or move them as far as gates allow. “Copy to” puts steps into other models, “Same again” makes another model alike.</source>
   <translation>Modelle, Teile, Stellen und Schritte. Wählen Sie eine Zeile, um sie zu ändern, mehrere Schritte, um sie auf einmal zu ändern; ziehen oder schieben Sie sie, soweit Bedingungen es erlauben. „Kopieren zu“ setzt Schritte in andere Modelle, „Noch eins“ macht ein gleiches Modell.</translation>
  </message>
  <message>
   <source>Finishing orders with options. Give one to any number of models; change it, and the change is offered to the models that came from it. Your own edits are told apart.</source>
   <translation>Reihenfolgen der Schritte mit Optionen. Geben Sie eine beliebig vielen Modellen; ändern Sie sie, und die Änderung wird den Modellen angeboten, die daraus kamen. Ihre eigenen Änderungen werden davon unterschieden.</translation>
  </message>
  <message>
   <source>Try a change beside the plan: an evening more, a step left out, a warm box. Compare the ends, then keep it or drop it.</source>
   <translation>Probieren Sie eine Änderung neben dem Plan: einen Abend mehr, einen Schritt weniger, eine Wärmebox. Vergleichen Sie das Ende, dann behalten oder verwerfen Sie sie.</translation>
  </message>
  <message>
   <source>What you want of the plan: pieces pinned to a time, one vehicle ahead of the others, and what counts most where two plans differ.</source>
   <translation>Was Sie vom Plan wollen: Arbeiten, die an eine Zeit geheftet sind, ein Fahrzeug vor den anderen, und was am meisten zählt, wo zwei Pläne sich unterscheiden.</translation>
  </message>
  <message>
   <source>Films that dry at this hour, and when each opens or closes. Say what you see, and the times follow.</source>
   <translation>Filme, die zu dieser Stunde trocknen, und wann jeder frei wird oder abläuft. Sagen Sie, was Sie sehen, und die Zeiten folgen.</translation>
  </message>
  <message>
   <source>What was really done. From it the program learns how long your work takes, and how fast your films dry.</source>
   <translation>Was wirklich getan wurde. Daraus lernt das Programm, wie lange Ihre Arbeit dauert und wie schnell Ihre Filme trocknen.</translation>
  </message>
  <message>
   <source>Coatings by family, mixes, consumables, leftovers and sample cards: what there is, what the plan needs, and where each drying time comes from.</source>
   <translation>Mittel nach Familie, Mischungen, Verbrauchsmaterial, Reste und Musterkarten: was da ist, was der Plan braucht und woher jede Trockenzeit stammt.</translation>
  </message>
  <message>
   <source>What runs out along the plan, when, and what to buy. Where an area is missing, the amount is a guess and says so.</source>
   <translation>Was im Lauf des Plans ausgeht, wann, und was zu kaufen ist. Wo eine Fläche fehlt, ist die Menge geschätzt und sagt es.</translation>
  </message>
  <message>
   <source>When you are at the bench: every week, once, or not at all; with quiet hours and daylight. Each day shows how much of it is planned.</source>
   <translation>Wann Sie am Basteltisch sind: jede Woche, einmal oder gar nicht; mit Ruhezeiten und Tageslicht. Jeder Tag zeigt, wie viel davon verplant ist.</translation>
  </message>
  <message>
   <source>Airbrushes with the minutes that loading and cleaning take, and the places where films dry, a warm box among them. Warm air bends thin plastic: stay below 40 °C.</source>
   <translation>Airbrushes mit den Minuten fürs Füllen und Reinigen, und die Orte, an denen Filme trocknen, darunter eine Wärmebox. Warme Luft verzieht dünnen Kunststoff: unter 40 °C bleiben.</translation>
  </message>
  <message>
   <source>bench mode: one piece of work at a time, in large letters</source>
   <translation>Basteltisch-Ansicht: eine Arbeit nach der anderen, in großer Schrift</translation>
  </message>
  <message>
   <source>first questions: to the table, the days, the room</source>
   <translation>erste Fragen: zum Tisch, zu den Tagen, zum Raum</translation>
  </message>
  <message>
   <source>Enter, Ctrl+Enter</source>
   <translation>Enter, Ctrl+Enter</translation>
  </message>
  <message>
   <source>first questions: another line, plan it</source>
   <translation>erste Fragen: noch eine Zeile, planen</translation>
  </message>
  <message>
   <source>← →</source>
   <translation>← →</translation>
  </message>
  <message>
   <source>timeline: piece before and after in the lane</source>
   <translation>Zeitstrahl: Arbeit davor und danach in der Bahn</translation>
  </message>
  <message>
   <source>↑ ↓</source>
   <translation>↑ ↓</translation>
  </message>
  <message>
   <source>timeline: nearest piece in the lane above and below</source>
   <translation>Zeitstrahl: nächstgelegene Arbeit in der Bahn darüber und darunter</translation>
  </message>
  <message>
   <source>Home, End</source>
   <translation>Pos1, Ende</translation>
  </message>
  <message>
   <source>timeline: first and last piece</source>
   <translation>Zeitstrahl: erste und letzte Arbeit</translation>
  </message>
  <message>
   <source>Enter</source>
   <translation>Enter</translation>
  </message>
  <message>
   <source>timeline: go to the reason and the gates</source>
   <translation>Zeitstrahl: zur Begründung und zu den Bedingungen</translation>
  </message>
  <message>
   <source>timeline: larger, smaller, fit the whole plan</source>
   <translation>Zeitstrahl: größer, kleiner, ganzen Plan einpassen</translation>
  </message>
  <message>
   <source>timeline: pin the piece where it stands, or to a session</source>
   <translation>Zeitstrahl: die Arbeit hier oder an eine Sitzung anheften</translation>
  </message>
  <message>
   <source>timeline: pin the piece a session sooner, later</source>
   <translation>Zeitstrahl: die Arbeit eine Sitzung früher, später anheften</translation>
  </message>
  <message>
   <source>timeline: not before a session, together with another piece</source>
   <translation>Zeitstrahl: nicht vor einer Sitzung, zusammen mit einer anderen Arbeit</translation>
  </message>
  <message>
   <source>timeline: take the wishes of the piece back</source>
   <translation>Zeitstrahl: die Wünsche zur Arbeit zurücknehmen</translation>
  </message>
  <message>
   <source>timeline: finish this vehicle first</source>
   <translation>Zeitstrahl: dieses Fahrzeug zuerst fertigstellen</translation>
  </message>
  <message>
   <source>drag a piece</source>
   <translation>eine Arbeit ziehen</translation>
  </message>
  <message>
   <source>timeline: pin it to another session</source>
   <translation>Zeitstrahl: sie an eine andere Sitzung anheften</translation>
  </message>
  <message>
   <source>Ctrl + wheel</source>
   <translation>Ctrl + Mausrad</translation>
  </message>
  <message>
   <source>timeline: zoom</source>
   <translation>Zeitstrahl: vergrößern</translation>
  </message>
  <message>
   <source>Shift + wheel, drag</source>
   <translation>Umschalt + Mausrad, ziehen</translation>
  </message>
  <message>
   <source>timeline: move along</source>
   <translation>Zeitstrahl: entlangfahren</translation>
  </message>
  <message>
   <source>Ins, Shift+Ins, Del, F2</source>
   <translation>Einfg, Umschalt+Einfg, Entf, F2</translation>
  </message>
  <message>
   <source>build: add a step, a model; remove, rename</source>
   <translation>Bauplan: Schritt, Modell hinzufügen; entfernen, umbenennen</translation>
  </message>
  <message>
   <source>build: what is chosen up, down, as gates allow</source>
   <translation>Bauplan: Gewähltes nach oben, unten, soweit Bedingungen es erlauben</translation>
  </message>
  <message>
   <source>build: copy steps, put them into the models chosen</source>
   <translation>Bauplan: Schritte kopieren, in die gewählten Modelle einsetzen</translation>
  </message>
  <message>
   <source>build: same again, other markings</source>
   <translation>Bauplan: noch eins, andere Markierungen</translation>
  </message>
  <message>
   <source>Ctrl+F</source>
   <translation>Ctrl+F</translation>
  </message>
  <message>
   <source>build: show only models with these words</source>
   <translation>Bauplan: nur Modelle mit diesen Wörtern zeigen</translation>
  </message>
  <message>
   <source>what if: try a change, alone or with the chosen one</source>
   <translation>Was wäre, wenn: eine Änderung ausprobieren, allein oder mit der gewählten</translation>
  </message>
  <message>
   <source>Ctrl+Enter, Del</source>
   <translation>Ctrl+Enter, Entf</translation>
  </message>
  <message>
   <source>what if: keep, drop what is chosen</source>
   <translation>Was wäre, wenn: Gewähltes behalten, verwerfen</translation>
  </message>
  <message>
   <source>wishes: what is chosen counts more, less</source>
   <translation>Wünsche: Gewähltes zählt mehr, weniger</translation>
  </message>
  <message>
   <source>Enter, Del</source>
   <translation>Enter, Entf</translation>
  </message>
  <message>
   <source>lists of stock, gear, hours: change, remove what is chosen</source>
   <translation>Listen von Vorrat, Ausrüstung, Stunden: Gewähltes ändern, entfernen</translation>
  </message>
  <message>
   <source>stock: show only what has these words</source>
   <translation>Vorrat: nur zeigen, was diese Wörter hat</translation>
  </message>
  <message>
   <source>← → ↑ ↓, Page Up, Page Down</source>
   <translation>← → ↑ ↓, Bild auf, Bild ab</translation>
  </message>
  <message>
   <source>bench time: to another day, to other weeks</source>
   <translation>Bastelzeit: zu einem anderen Tag, zu anderen Wochen</translation>
  </message>
  <message>
   <source>what this page is for; every key</source>
   <translation>wozu diese Seite da ist; alle Tasten</translation>
  </message>
  <message>
   <source>go to a room</source>
   <translation>in einen Raum gehen</translation>
  </message>
  <message>
   <source>straight to the page that View, Pages names with it</source>
   <translation>gerade zu der Seite, neben der die Taste in Ansicht, Seiten steht</translation>
  </message>
  <message>
   <source>Ctrl+Page Down, Ctrl+Page Up</source>
   <translation>Strg+Bild ab, Strg+Bild auf</translation>
  </message>
  <message>
   <source>the next page of the room, the one before</source>
   <translation>die nächste Seite des Raums, die davor</translation>
  </message>
  <message>
   <source>Alt+Left</source>
   <translation>Alt+Links</translation>
  </message>
  <message>
   <source>back to the page where one was before</source>
   <translation>zurück zu der Seite, auf der man vorher war</translation>
  </message>
  <message>
   <source>change the air: temperature and humidity</source>
   <translation>die Luft ändern: Temperatur und Feuchte</translation>
  </message>
  <message>
   <source>fold the inspector away, or bring it back</source>
   <translation>den Inspektor einklappen oder zurückholen</translation>
  </message>
  <message>
   <source>days off; bench time beside the usual</source>
   <translation>freie Tage; Bastelzeit neben der üblichen</translation>
  </message>
  <message>
   <source>take the better plan that was found</source>
   <translation>den besseren Plan nehmen, der gefunden wurde</translation>
  </message>
  <message>
   <source>I did something else: one line tells what was painted</source>
   <translation>Ich habe etwas anderes gemacht: eine Zeile sagt, was gemalt wurde</translation>
  </message>
  <message>
   <source>an hour more at the bench</source>
   <translation>eine Stunde mehr am Basteltisch</translation>
  </message>
  <message>
   <source>free time: what the gaps of the coming days are good for</source>
   <translation>freie Zeit: wozu die Lücken der nächsten Tage gut sind</translation>
  </message>
  <message>
   <source>close the evening: what is done, left over and next</source>
   <translation>den Abend schließen: was erledigt ist, übrig bleibt und als Nächstes kommt</translation>
  </message>
  <message>
   <source>stop for tonight; this evening is lost</source>
   <translation>Schluss für heute Abend; dieser Abend fällt aus</translation>
  </message>
  <message>
   <source>Ctrl+Backspace</source>
   <translation>Ctrl+Rücktaste</translation>
  </message>
  <message>
   <source>take back the last, also from the logbook</source>
   <translation>das Letzte zurücknehmen, auch aus dem Logbuch</translation>
  </message>
  <message>
   <source>undo, redo</source>
   <translation>rückgängig, wiederholen</translation>
  </message>
  <message>
   <source>the last edits, and back to any of them</source>
   <translation>die letzten Änderungen, und zurück zu jeder davon</translation>
  </message>
  <message>
   <source>more vehicles; another painted as one was</source>
   <translation>weitere Fahrzeuge; noch eins bemalen wie eines</translation>
  </message>
  <message>
   <source>change the order of models; how far they are</source>
   <translation>den Ablauf von Modellen ändern; wie weit sie sind</translation>
  </message>
  <message>
   <source>dates and priorities of the models</source>
   <translation>Termine und Vorrang der Modelle</translation>
  </message>
  <message>
   <source>the next finding, which Enter mends</source>
   <translation>der nächste Befund, den Eingabe behebt</translation>
  </message>
  <message>
   <source>print tonight's sheet</source>
   <translation>das Blatt für heute Abend drucken</translation>
  </message>
  <message>
   <source>import, export a project file</source>
   <translation>eine Projektdatei importieren, exportieren</translation>
  </message>
  <message>
   <source>go to the next control</source>
   <translation>zum nächsten Bedienelement</translation>
  </message>
  <message>
   <source>tick off a place; press a button</source>
   <translation>eine Stelle abhaken; einen Knopf drücken</translation>
  </message>
  <message>
   <source>&amp;Tonight</source>
   <translation>&amp;Heute Abend</translation>
  </message>
  <message>
   <source>Ti&amp;meline</source>
   <translation>&amp;Zeitstrahl</translation>
  </message>
  <message>
   <source>D&amp;rying times</source>
   <translation>T&amp;rockenzeiten</translation>
  </message>
  <message>
   <source>&amp;Coat stack</source>
   <translation>&amp;Schichtaufbau</translation>
  </message>
  <message>
   <source>B&amp;uild</source>
   <translation>B&amp;auplan</translation>
  </message>
  <message>
   <source>Se&amp;quences</source>
   <translation>Abläu&amp;fe</translation>
  </message>
  <message>
   <source>&amp;What if</source>
   <translation>&amp;Was wäre, wenn</translation>
  </message>
  <message>
   <source>Wish&amp;es</source>
   <translation>Wü&amp;nsche</translation>
  </message>
  <message>
   <source>&amp;Drying now</source>
   <translation>&amp;Trocknet jetzt</translation>
  </message>
  <message>
   <source>&amp;Logbook</source>
   <translation>&amp;Logbuch</translation>
  </message>
  <message>
   <source>&amp;Stock</source>
   <translation>&amp;Vorrat</translation>
  </message>
  <message>
   <source>S&amp;hopping</source>
   <translation>&amp;Einkauf</translation>
  </message>
  <message>
   <source>&amp;Bench time</source>
   <translation>&amp;Bastelzeit</translation>
  </message>
  <message>
   <source>&amp;Gear</source>
   <translation>A&amp;usrüstung</translation>
  </message>
  <message>
   <source>{what}: {work}</source>
   <translation>{what}: {work}</translation>
  </message>
  <message>
   <source>no place</source>
   <translation>kein Platz</translation>
  </message>
  <message>
   <source>{work}: {before} → {after}. {why}</source>
   <translation>{work}: {before} → {after}. {why}</translation>
  </message>
  <message>
   <source>planning failed; the program's log says where</source>
   <translation>Die Planung ist gescheitert; das Protokoll des Programms sagt, wo</translation>
  </message>
  <message>
   <source>by {date}</source>
   <translation>bis {date}</translation>
  </message>
  <message>
   <source>{length} late</source>
   <translation>{length} zu spät</translation>
  </message>
  <message>
   <source>{length} in hand</source>
   <translation>{length} Reserve</translation>
  </message>
  <message>
   <source>{n} day</source>
   <translation>{n} Tag</translation>
  </message>
  <message>
   <source>{n} days</source>
   <translation>{n} Tage</translation>
  </message>
  <message>
   <source>{state} {time}</source>
   <translation>{state} {time}</translation>
  </message>
  <message>
   <source>closes {time}</source>
   <translation>schließt {time}</translation>
  </message>
  <message>
   <source>ddd d MMM HH:mm</source>
   <translation>ddd d. MMM HH:mm</translation>
  </message>
  <message>
   <source>{n} job tonight</source>
   <translation>{n} Arbeit heute</translation>
  </message>
  <message>
   <source>{n} jobs tonight</source>
   <translation>{n} Arbeiten heute</translation>
  </message>
  <message>
   <source>how it has come out</source>
   <translation>wie es geworden ist</translation>
  </message>
  <message>
   <source>dull enough to be wiped back?</source>
   <translation>matt genug zum Abwischen?</translation>
  </message>
  <message>
   <source>tide marks</source>
   <translation>Wasserränder</translation>
  </message>
  <message>
   <source>frosting, dust, runs</source>
   <translation>Raureif, Staub, Läufer</translation>
  </message>
  <message>
   <source>bubbles and lifted edges</source>
   <translation>Blasen und abstehende Ränder</translation>
  </message>
  <message>
   <source>silvery shine under the decals</source>
   <translation>Silberglanz unter den Decals</translation>
  </message>
  <message>
   <source>{work} ({parts}): {sign}</source>
   <translation>{work} ({parts}): {sign}</translation>
  </message>
  <message>
   <source>Have a look now: {what}</source>
   <translation>Jetzt nachsehen: {what}</translation>
  </message>
  <message>
   <source>Have a look {time}: {what}</source>
   <translation>Nachsehen {time}: {what}</translation>
  </message>
  <message>
   <source>Look now (L): {work}: {sign}</source>
   <translation>Jetzt nachsehen (L): {work}: {sign}</translation>
  </message>
  <message>
   <source>Look {time}: {work}: {sign}</source>
   <translation>Nachsehen {time}: {work}: {sign}</translation>
  </message>
  <message>
   <source>It smells: air the room, well before others go to bed.</source>
   <translation>Es riecht: lüften, lange bevor andere schlafen gehen.</translation>
  </message>
  <message>
   <source>It is noisy: quiet hours begin at {time}.</source>
   <translation>Es ist laut: Die Ruhezeit beginnt um {time}.</translation>
  </message>
  <message>
   <source>It is noisy: think of who sleeps.</source>
   <translation>Es ist laut: an die denken, die schlafen.</translation>
  </message>
  <message>
   <source>It needs daylight.</source>
   <translation>Es braucht Tageslicht.</translation>
  </message>
  <message>
   <source>It is laid in any air, on your word.</source>
   <translation>Es wird in jeder Luft aufgetragen, auf Ihr Wort.</translation>
  </message>
  <message>
   <source>All its coats belong into this evening.</source>
   <translation>Alle seine Schichten gehören in diesen Abend.</translation>
  </message>
  <message>
   <source>Have a look {length} later: {sign}</source>
   <translation>{length} später nachsehen: {sign}</translation>
  </message>
  <message>
   <source>Also takes this colour: {others}</source>
   <translation>Bekommt diese Farbe auch: {others}</translation>
  </message>
  <message>
   <source>{why} Spray {model} alone, judge it {time}, then the others.</source>
   <translation>{why} Sprühen Sie erst nur {model}, beurteilen Sie es {time}, dann die anderen.</translation>
  </message>
  <message>
   <source>{n} tries have failed here; leave it alone until {time}.</source>
   <translation>{n} Versuche sind hier misslungen; lassen Sie es bis {time} in Ruhe.</translation>
  </message>
  <message>
   <source>after “{step}”</source>
   <translation>nach „{step}“</translation>
  </message>
  <message>
   <source>no place yet</source>
   <translation>noch ohne Platz</translation>
  </message>
  <message>
   <source>{parts} · from {time}, {length}</source>
   <translation>{parts} · ab {time}, {length}</translation>
  </message>
  <message>
   <source>✓ {places}: {coating} is {state}</source>
   <translation>✓ {places}: {coating} ist {state}</translation>
  </message>
  <message>
   <source>○ {places}: {coating} is only {state}</source>
   <translation>○ {places}: {coating} ist erst {state}</translation>
  </message>
  <message>
   <source>{told}, dry-through never in this air</source>
   <translation>{told}, durchgetrocknet nie in dieser Luft</translation>
  </message>
  <message>
   <source>{told}, dry-through {time}</source>
   <translation>{told}, durchgetrocknet {time}</translation>
  </message>
  <message>
   <source>Wet, safe under a cover: {model}</source>
   <translation>Nass, sicher abgedeckt: {model}</translation>
  </message>
  <message>
   <source>{airbrush} is clean; it held {coating}</source>
   <translation>{airbrush} ist sauber; darin war {coating}</translation>
  </message>
  <message>
   <source>Loose parts are back in their box</source>
   <translation>Lose Teile sind wieder in ihrer Schachtel</translation>
  </message>
  <message>
   <source>Bottles are closed, brushes rinsed</source>
   <translation>Flaschen sind zu, Pinsel ausgewaschen</translation>
  </message>
  <message>
   <source>Oily rags lie flat outdoors, or under water in a closed metal can</source>
   <translation>Ölige Lappen liegen ausgebreitet im Freien oder unter Wasser in einer geschlossenen Blechdose</translation>
  </message>
  <message>
   <source>Save a finishing order as a sequence</source>
   <translation>Eine Reihenfolge von Schritten als Ablauf sichern</translation>
  </message>
  <message>
   <source>Option</source>
   <translation>Option</translation>
  </message>
  <message>
   <source>Another option</source>
   <translation>Noch eine Option</translation>
  </message>
  <message>
   <source>Colour</source>
   <translation>Farbe</translation>
  </message>
  <message>
   <source>Another colour</source>
   <translation>Noch eine Farbe</translation>
  </message>
  <message>
   <source>Note and size</source>
   <translation>Notiz und Größe</translation>
  </message>
  <message>
   <source>Give “{name}”</source>
   <translation>„{name}“ geben</translation>
  </message>
  <message>
   <source>{option} – {note}</source>
   <translation>{option} – {note}</translation>
  </message>
  <message>
   <source>your own edit</source>
   <translation>eigene Änderung</translation>
  </message>
  <message>
   <source>taking over undoes it: {change}</source>
   <translation>Übernehmen macht sie rückgängig: {change}</translation>
  </message>
  <message>
   <source>does not fit</source>
   <translation>passt nicht</translation>
  </message>
  <message>
   <source>in the logbook</source>
   <translation>im Logbuch</translation>
  </message>
  <message>
   <source>it would be gone, so the model stays</source>
   <translation>es wäre fort, also bleibt das Modell</translation>
  </message>
  <message>
   <source>goes</source>
   <translation>fällt weg</translation>
  </message>
  <message>
   <source>comes</source>
   <translation>kommt hinzu</translation>
  </message>
  <message>
   <source>changes</source>
   <translation>ändert sich</translation>
  </message>
  <message>
   <source>moves</source>
   <translation>wandert</translation>
  </message>
  <message>
   <source>stands elsewhere in the order</source>
   <translation>steht an anderer Stelle der Reihenfolge</translation>
  </message>
  <message>
   <source>{work} · {where} · {minutes}</source>
   <translation>{work} · {where} · {minutes}</translation>
  </message>
  <message>
   <source>every part</source>
   <translation>jedes Teil</translation>
  </message>
  <message>
   <source>every part but {parts}</source>
   <translation>jedes Teil außer {parts}</translation>
  </message>
  <message>
   <source>{place} wherever there is one</source>
   <translation>{place}, wo es eine gibt</translation>
  </message>
  <message>
   <source>{place} of {part}</source>
   <translation>{place} von {part}</translation>
  </message>
  <message>
   <source>{colour}, {n} coats</source>
   <translation>{colour}, {n} Schichten</translation>
  </message>
  <message>
   <source>{n} min</source>
   <translation>{n} min</translation>
  </message>
  <message>
   <source>{n} min a part</source>
   <translation>{n} min je Teil</translation>
  </message>
  <message>
   <source>{n} min a change of colour</source>
   <translation>{n} min je Farbwechsel</translation>
  </message>
  <message>
   <source>with {options}</source>
   <translation>mit {options}</translation>
  </message>
  <message>
   <source>not with {options}</source>
   <translation>nicht mit {options}</translation>
  </message>
  <message>
   <source>after {steps}</source>
   <translation>nach {steps}</translation>
  </message>
  <message>
   <source>look {n} min later</source>
   <translation>{n} min später nachsehen</translation>
  </message>
  <message>
   <source>done from {begin} to {end}</source>
   <translation>fertig zwischen {begin} und {end}</translation>
  </message>
  <message>
   <source>begun from {begin} to {end}</source>
   <translation>begonnen zwischen {begin} und {end}</translation>
  </message>
  <message>
   <source>done within {end}</source>
   <translation>fertig binnen {end}</translation>
  </message>
  <message>
   <source>begun within {end}</source>
   <translation>begonnen binnen {end}</translation>
  </message>
  <message>
   <source>from {begin} on</source>
   <translation>ab {begin}</translation>
  </message>
  <message>
   <source>at any time</source>
   <translation>jederzeit</translation>
  </message>
  <message>
   <source>{window} with {minutes} min of preparation</source>
   <translation>{window} mit {minutes} min Vorbereitung</translation>
  </message>
  <message>
   <source>{windows} after {step}</source>
   <translation>{windows} nach {step}</translation>
  </message>
  <message>
   <source> or </source>
   <translation> oder </translation>
  </message>
  <message>
   <source>{span} at 23 °C and 50 %</source>
   <translation>{span} bei 23 °C und 50 %</translation>
  </message>
  <message>
   <source>Gates: {gates}</source>
   <translation>Bedingungen: {gates}</translation>
  </message>
  <message>
   <source>Only {options}</source>
   <translation>Nur {options}</translation>
  </message>
  <message>
   <source>{colour} on {places}, {n} ×</source>
   <translation>{colour} auf {places}, {n} ×</translation>
  </message>
  <message>
   <source>{text}, {share:.3g} % of it</source>
   <translation>{text}, {share:.3g} % davon</translation>
  </message>
  <message>
   <source>{field}: {was} → {becomes}</source>
   <translation>{field}: {was} → {becomes}</translation>
  </message>
  <message>
   <source>name</source>
   <translation>Name</translation>
  </message>
  <message>
   <source>stage</source>
   <translation>Arbeitsschritt</translation>
  </message>
  <message>
   <source>tool</source>
   <translation>Werkzeug</translation>
  </message>
  <message>
   <source>minutes</source>
   <translation>Minuten</translation>
  </message>
  <message>
   <source>coats</source>
   <translation>Schichten</translation>
  </message>
  <message>
   <source>places</source>
   <translation>Stellen</translation>
  </message>
  <message>
   <source>gates</source>
   <translation>Bedingungen</translation>
  </message>
  <message>
   <source>waits for</source>
   <translation>wartet auf</translation>
  </message>
  <message>
   <source>look after</source>
   <translation>nachsehen</translation>
  </message>
  <message>
   <source>shortest piece</source>
   <translation>kürzestes Stück</translation>
  </message>
  <message>
   <source>dries in</source>
   <translation>trocknet in</translation>
  </message>
  <message>
   <source>the usual place</source>
   <translation>dem üblichen Ort</translation>
  </message>
  <message>
   <source>or dries in</source>
   <translation>oder trocknet in</translation>
  </message>
  <message>
   <source>marks</source>
   <translation>Merkmale</translation>
  </message>
  <message>
   <source>role</source>
   <translation>Rolle</translation>
  </message>
  <message>
   <source>needs two people</source>
   <translation>braucht zwei Personen</translation>
  </message>
  <message>
   <source>faces scraped</source>
   <translation>Flächen geschabt</translation>
  </message>
  <message>
   <source>drying places</source>
   <translation>Trockenplätze</translation>
  </message>
  <message>
   <source>yes</source>
   <translation>ja</translation>
  </message>
  <message>
   <source>no</source>
   <translation>nein</translation>
  </message>
  <message>
   <source>all in one session</source>
   <translation>ganz in einer Sitzung</translation>
  </message>
  <message>
   <source>Step of “{name}”</source>
   <translation>Schritt von „{name}“</translation>
  </message>
  <message>
   <source>A wedge thins while a film dries, and ends in a ring where it is ready. A bracket marks a window that closes.</source>
   <translation>Ein Keil wird schmaler, während ein Film trocknet, und endet in einem Ring, wo er bereit ist. Eine Klammer zeigt ein Fenster, das schließt.</translation>
  </message>
  <message>
   <source>enough</source>
   <translation>genug</translation>
  </message>
  <message>
   <source>perhaps enough</source>
   <translation>vielleicht genug</translation>
  </message>
  <message>
   <source>some, amount not known</source>
   <translation>etwas, Menge unbekannt</translation>
  </message>
  <message>
   <source>1 bottle of {size:g} ml</source>
   <translation>1 Flasche zu {size:g} ml</translation>
  </message>
  <message>
   <source>{n} bottles of {size:g} ml</source>
   <translation>{n} Flaschen zu {size:g} ml</translation>
  </message>
  <message>
   <source>under half a bottle left</source>
   <translation>weniger als eine halbe Flasche übrig</translation>
  </message>
  <message>
   <source>some places have no area</source>
   <translation>einige Stellen haben keine Fläche</translation>
  </message>
  <message>
   <source>{amount} {unit}</source>
   <translation>{amount} {unit}</translation>
  </message>
  <message>
   <source>runs out {when}, at {work}</source>
   <translation>geht aus {when}, bei {work}</translation>
  </message>
  <message>
   <source>runs out {when}, at {work}: model {number} of {models} that take it</source>
   <translation>geht aus {when}, bei {work}: Modell {number} von {models}, die es brauchen</translation>
  </message>
  <message>
   <source>✓ for all {models}</source>
   <translation>✓ für alle {models}</translation>
  </message>
  <message>
   <source>? some places have no area</source>
   <translation>? einige Stellen haben keine Fläche</translation>
  </message>
  <message>
   <source>⚠ for {covered} of {models}</source>
   <translation>⚠ für {covered} von {models}</translation>
  </message>
  <message>
   <source>{amount} {coating}</source>
   <translation>{amount} {coating}</translation>
  </message>
  <message>
   <source>Safe to spray: bone-dry air has no dew point</source>
   <translation>Spritzen ist sicher: ganz trockene Luft hat keinen Taupunkt</translation>
  </message>
  <message>
   <source>Safe to spray: {margin:.1f} °C above the dew point</source>
   <translation>Spritzen ist sicher: {margin:.1f} °C über dem Taupunkt</translation>
  </message>
  <message>
   <source>Spray {coating} with care: {reason}</source>
   <translation>{coating} mit Vorsicht spritzen: {reason}</translation>
  </message>
  <message>
   <source>Do not spray {coating} now: {reason}</source>
   <translation>{coating} jetzt nicht spritzen: {reason}</translation>
  </message>
  <message>
   <source>Do not spray now: {reason}</source>
   <translation>Jetzt nicht spritzen: {reason}</translation>
  </message>
  <message>
   <source>from {time}</source>
   <translation>ab {time}</translation>
  </message>
  <message>
   <source>{state} from {time}</source>
   <translation>{state} ab {time}</translation>
  </message>
  <message>
   <source>{name}, coat {coat} of {coats}</source>
   <translation>{name}, Schicht {coat} von {coats}</translation>
  </message>
  <message>
   <source>No date for a hard clear, because of {coating} on {place}</source>
   <translation>Kein Datum für einen harten Klarlack, wegen {coating} auf {place}</translation>
  </message>
  <message>
   <source>A hard clear at the earliest: {time}, because of {coating} on {place}</source>
   <translation>Harter Klarlack frühestens: {time}, wegen {coating} auf {place}</translation>
  </message>
  <message>
   <source>laid {time}</source>
   <translation>aufgetragen {time}</translation>
  </message>
  <message>
   <source>The last start failed; the window opens without its saved layout.</source>
   <translation>Der letzte Start ist gescheitert; das Fenster öffnet ohne sein gespeichertes Aussehen.</translation>
  </message>
  <message>
   <source>Coating</source>
   <translation>Mittel</translation>
  </message>
  <message>
   <source>Another coating</source>
   <translation>Noch ein Mittel</translation>
  </message>
  <message>
   <source>{status}: {source}</source>
   <translation>{status}: {source}</translation>
  </message>
  <message>
   <source>Touch it lightly: no mark, nothing on the finger.</source>
   <translation>Leicht berühren: keine Spur, nichts am Finger.</translation>
  </message>
  <message>
   <source>Press the thumb and twist: nothing moves, no print.</source>
   <translation>Daumen andrücken und drehen: nichts bewegt sich, kein Abdruck.</translation>
  </message>
  <message>
   <source>Low-tack tape, pulled off after a minute: no print, no paint on it.</source>
   <translation>Schwach klebendes Band, nach einer Minute abgezogen: kein Abdruck, keine Farbe daran.</translation>
  </message>
  <message>
   <source>A swab wet with the solvent of the next wash, on the edge: it takes no colour.</source>
   <translation>Ein Tupfer mit dem Lösemittel der nächsten Lasur, am Rand: er nimmt keine Farbe an.</translation>
  </message>
  <message>
   <source>held</source>
   <translation>hielt</translation>
  </message>
  <message>
   <source>By {answers} it takes {factor:.2f} times its stated times ({low:.2f} to {high:.2f}), surely {doubt:.2f} times the likely; the book reckons with {now:.2f}.</source>
   <translation>Nach {answers} braucht sie das {factor:.2f}-Fache ihrer angegebenen Zeiten ({low:.2f} bis {high:.2f}), sicher das {doubt:.2f}-Fache der wahrscheinlichen; das Buch rechnet mit {now:.2f}.</translation>
  </message>
  <message>
   <source>1 answer</source>
   <translation>1 Antwort</translation>
  </message>
  <message>
   <source>{n} answers</source>
   <translation>{n} Antworten</translation>
  </message>
  <message>
   <source>Its times go by {slope:+.0f} kJ/mol more by warmth than its family's.</source>
   <translation>Ihre Zeiten hängen um {slope:+.0f} kJ/mol mehr von der Wärme ab als die ihrer Familie.</translation>
  </message>
  <message>
   <source>{amount} left</source>
   <translation>noch {amount}</translation>
  </message>
  <message>
   <source>the plan takes {amount}</source>
   <translation>der Plan braucht {amount}</translation>
  </message>
  <message>
   <source>buy {amount}</source>
   <translation>{amount} kaufen</translation>
  </message>
  <message>
   <source>opened {day} {year}</source>
   <translation>geöffnet {day} {year}</translation>
  </message>
  <message>
   <source>{family} ({n})</source>
   <translation>{family} ({n})</translation>
  </message>
  <message>
   <source>Mix</source>
   <translation>Mischung</translation>
  </message>
  <message>
   <source>Another mix</source>
   <translation>Noch eine Mischung</translation>
  </message>
  <message>
   <source>Consumable</source>
   <translation>Verbrauchsmaterial</translation>
  </message>
  <message>
   <source>Another consumable</source>
   <translation>Noch ein Verbrauchsmaterial</translation>
  </message>
  <message>
   <source>Leftover mix</source>
   <translation>Mischungsrest</translation>
  </message>
  <message>
   <source>Another leftover mix</source>
   <translation>Noch ein Mischungsrest</translation>
  </message>
  <message>
   <source>Sample card</source>
   <translation>Musterkarte</translation>
  </message>
  <message>
   <source>Another sample card</source>
   <translation>Noch eine Musterkarte</translation>
  </message>
  <message>
   <source>{left}, plan {needed}</source>
   <translation>{left}, Plan {needed}</translation>
  </message>
  <message>
   <source>short {amount}</source>
   <translation>es fehlen {amount}</translation>
  </message>
  <message>
   <source>{short} · {day}</source>
   <translation>{short} · {day}</translation>
  </message>
  <message>
   <source>opened {year}</source>
   <translation>geöffnet {year}</translation>
  </message>
  <message>
   <source>under 0.1 ml</source>
   <translation>unter 0,1 ml</translation>
  </message>
  <message>
   <source>{amount:g} ml</source>
   <translation>{amount:g} ml</translation>
  </message>
  <message>
   <source>not known</source>
   <translation>unbekannt</translation>
  </message>
  <message>
   <source>over {amount}</source>
   <translation>über {amount}</translation>
  </message>
  <message>
   <source>{amount}, by {day}</source>
   <translation>{amount}, bis {day}</translation>
  </message>
  <message>
   <source>about {drops} drops</source>
   <translation>etwa {drops} Tropfen</translation>
  </message>
  <message>
   <source>{lack} more than there is</source>
   <translation>{lack} mehr als vorhanden</translation>
  </message>
  <message>
   <source>{day} {start}–{end}</source>
   <translation>{day} {start}–{end}</translation>
  </message>
  <message>
   <source>{stretch}: not ready before {at}</source>
   <translation>{stretch}: nicht bereit vor {at}</translation>
  </message>
  <message>
   <source>{stretch}: stays here</source>
   <translation>{stretch}: bleibt hier</translation>
  </message>
  <message>
   <source>{stretch}: pin here</source>
   <translation>{stretch}: hier anheften</translation>
  </message>
  <message>
   <source>{date} · two people</source>
   <translation>{date} · zwei Personen</translation>
  </message>
  <message>
   <source>{days} d {hours} h</source>
   <translation>{days} d {hours} h</translation>
  </message>
  <message>
   <source>{hours} h {minutes:02d}</source>
   <translation>{hours} h {minutes:02d}</translation>
  </message>
  <message>
   <source>{n} free</source>
   <translation>{n} frei</translation>
  </message>
  <message>
   <source>now {date} {time}</source>
   <translation>jetzt {date} {time}</translation>
  </message>
  <message>
   <source>is past</source>
   <translation>ist vorbei</translation>
  </message>
  <message>
   <source>⚠ Done all the same: {how}.</source>
   <translation>⚠ Trotzdem getan: {how}.</translation>
  </message>
  <message>
   <source>{name} ⚠</source>
   <translation>{name} ⚠</translation>
  </message>
  <message>
   <source>{name} · pinned</source>
   <translation>{name} · angeheftet</translation>
  </message>
  <message>
   <source>{name} · wished</source>
   <translation>{name} · gewünscht</translation>
  </message>
  <message>
   <source>{start}–{end}</source>
   <translation>{start}–{end}</translation>
  </message>
  <message>
   <source>{colour} +{n}</source>
   <translation>{colour} +{n}</translation>
  </message>
  <message>
   <source>now {time}</source>
   <translation>jetzt {time}</translation>
  </message>
  <message>
   <source>{coating}, {start}–{end}</source>
   <translation>{coating}, {start}–{end}</translation>
  </message>
  <message>
   <source>{model}: done {time}, late</source>
   <translation>{model}: fertig {time}, zu spät</translation>
  </message>
  <message>
   <source>{model}: done {time}</source>
   <translation>{model}: fertig {time}</translation>
  </message>
  <message>
   <source>{done}; four in five by {day}</source>
   <translation>{done}; vier von fünf bis {day}</translation>
  </message>
  <message>
   <source>{film}: never ready in this air</source>
   <translation>{film}: in dieser Luft nie bereit</translation>
  </message>
  <message>
   <source>{film}: {state} {time}</source>
   <translation>{film}: {state} {time}</translation>
  </message>
  <message>
   <source>{project}: {line}</source>
   <translation>{project}: {line}</translation>
  </message>
  <message>
   <source>{stretches}, {minutes} min of loading and cleaning</source>
   <translation>{stretches}, {minutes} min Füllen und Reinigen</translation>
  </message>
  <message>
   <source>{n} session</source>
   <translation>{n} Sitzung</translation>
  </message>
  <message>
   <source>{n} sessions</source>
   <translation>{n} Sitzungen</translation>
  </message>
  <message>
   <source>{n} piece of work has no place yet</source>
   <translation>{n} Arbeit hat noch keinen Platz</translation>
  </message>
  <message>
   <source>{n} pieces of work have no place yet</source>
   <translation>{n} Arbeiten haben noch keinen Platz</translation>
  </message>
  <message>
   <source>{coating}: {amount}</source>
   <translation>{coating}: {amount}</translation>
  </message>
  <message>
   <source>{stage}: {coating}</source>
   <translation>{stage}: {coating}</translation>
  </message>
  <message>
   <source>prepare {minutes} min</source>
   <translation>vorbereiten {minutes} min</translation>
  </message>
  <message>
   <source>load {minutes} min</source>
   <translation>einfüllen {minutes} min</translation>
  </message>
  <message>
   <source>change {minutes} min</source>
   <translation>wechseln {minutes} min</translation>
  </message>
  <message>
   <source>clean {minutes} min</source>
   <translation>reinigen {minutes} min</translation>
  </message>
  <message>
   <source>{ml:.1f} ml in all</source>
   <translation>insgesamt {ml:.1f} ml</translation>
  </message>
  <message>
   <source>⚠ {missed}</source>
   <translation>⚠ {missed}</translation>
  </message>
  <message>
   <source>⚠ {n} more dates are missed</source>
   <translation>⚠ {n} weitere Daten werden verfehlt</translation>
  </message>
  <message>
   <source>{airbrush} holds {coating} since {time}</source>
   <translation>{airbrush}: darin ist {coating} seit {time}</translation>
  </message>
  <message>
   <source>{n} job</source>
   <translation>{n} Arbeit</translation>
  </message>
  <message>
   <source>{n} jobs</source>
   <translation>{n} Arbeiten</translation>
  </message>
  <message>
   <source>{jobs} in {length}</source>
   <translation>{jobs} in {length}</translation>
  </message>
  <message>
   <source>All done for tonight</source>
   <translation>Für heute Abend alles erledigt</translation>
  </message>
  <message>
   <source>Nothing to do tonight</source>
   <translation>Heute Abend nichts zu tun</translation>
  </message>
  <message>
   <source>{first}.</source>
   <translation>{first}.</translation>
  </message>
  <message>
   <source>{first}. Done {day}.</source>
   <translation>{first}. Fertig {day}.</translation>
  </message>
  <message>
   <source>{first}. Done {day}, {length} late.</source>
   <translation>{first}. Fertig {day}, {length} zu spät.</translation>
  </message>
  <message>
   <source>{first}. Done {day}, {length} in hand.</source>
   <translation>{first}. Fertig {day}, {length} Reserve.</translation>
  </message>
  <message>
   <source>in {length}</source>
   <translation>in {length}</translation>
  </message>
  <message>
   <source>{n} fill</source>
   <translation>{n} Füllung</translation>
  </message>
  <message>
   <source>{n} fills</source>
   <translation>{n} Füllungen</translation>
  </message>
  <message>
   <source>{n} coat stays wet overnight</source>
   <translation>{n} Schicht bleibt über Nacht nass</translation>
  </message>
  <message>
   <source>{n} coats stay wet overnight</source>
   <translation>{n} Schichten bleiben über Nacht nass</translation>
  </message>
  <message>
   <source>{n} done</source>
   <translation>{n} erledigt</translation>
  </message>
  <message>
   <source>{length} free: every drying place is taken</source>
   <translation>{length} frei: alle Trockenplätze sind belegt</translation>
  </message>
  <message>
   <source>{length} free: nothing is ready sooner</source>
   <translation>{length} frei: vorher ist nichts bereit</translation>
  </message>
  <message>
   <source>{ending}. {gap}</source>
   <translation>{ending}. {gap}</translation>
  </message>
  <message>
   <source>Nothing is ready in this session; the bench is yours until {end}</source>
   <translation>In dieser Sitzung ist nichts bereit; der Tisch gehört bis {end} Ihnen</translation>
  </message>
  <message>
   <source>Done for this session, {length} before it ends at {end}</source>
   <translation>Für diese Sitzung fertig, {length} vor deren Ende um {end}</translation>
  </message>
  <message>
   <source>Bench time ends at {end}</source>
   <translation>Die Bastelzeit endet um {end}</translation>
  </message>
  <message>
   <source>{time}: {pause}</source>
   <translation>{time}: {pause}</translation>
  </message>
  <message>
   <source>trying it failed; the program's log says where</source>
   <translation>Das Ausprobieren ist gescheitert; das Protokoll des Programms sagt, wo</translation>
  </message>
  <message>
   <source>dddd d MMMM</source>
   <translation>dddd, d. MMMM</translation>
  </message>
  <message>
   <source>ddd d MMM</source>
   <translation>ddd d. MMM</translation>
  </message>
  <message>
   <source>d MMM</source>
   <translation>ddd d.M.</translation>
  </message>
  <message>
   <source>en</source>
   <translation>de</translation>
  </message>
  <message>
   <source>d MMM yyyy</source>
   <translation>d. MMM yyyy</translation>
  </message>
  <message>
   <source>today {time}</source>
   <translation>heute {time}</translation>
  </message>
  <message>
   <source>{hours} h</source>
   <translation>{hours} h</translation>
  </message>
  <message>
   <source>{hours} h {minutes} min</source>
   <translation>{hours} h {minutes} min</translation>
  </message>
  <message>
   <source>{days} days</source>
   <translation>{days} Tage</translation>
  </message>
  <message>
   <source>{temperature} °C</source>
   <translation>{temperature} °C</translation>
  </message>
  <message>
   <source>load {coating}</source>
   <translation>{coating} einfüllen</translation>
  </message>
  <message>
   <source>change to {coating}</source>
   <translation>zu {coating} wechseln</translation>
  </message>
  <message>
   <source>clean the airbrush</source>
   <translation>Airbrush reinigen</translation>
  </message>
  <message>
   <source>prepare the film</source>
   <translation>Film vorbereiten</translation>
  </message>
  <message>
   <source>{some} and {last}</source>
   <translation>{some} und {last}</translation>
  </message>
  <message>
   <source>&amp;Plan</source>
   <translation>&amp;Plan</translation>
  </message>
  <message>
   <source>&amp;Models</source>
   <translation>&amp;Modelle</translation>
  </message>
  <message>
   <source>Pai&amp;nts</source>
   <translation>F&amp;arben</translation>
  </message>
  <message>
   <source>&amp;Bench</source>
   <translation>&amp;Werkbank</translation>
  </message>
 </context>
</TS>
