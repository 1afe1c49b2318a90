### The sheets for whoever leads a class: lessons, progress, labels, the measuring form, practice pieces.

teacher-skip = Skip to the lessons
teacher-for = sheets for whoever leads { $whose }
teacher-keep = These sheets hold names and notes. Keep them to yourself; everybody has a guide of their own.

## The lessons

teacher-lessons = The lessons
# $length: of a lesson.
teacher-lessons-are = Lessons of { $length }, at the pace of the workroom. Everybody stops at the last place where the work can be put away.
# $lessons (number): with the turns at what the room has.
teacher-lessons-in-turns = With turns at the machines and irons of the room, all of it takes { $lessons } lessons.
teacher-lessons-fewer = Where there are fewer machines or irons than a lesson asks for, take turns; give their number in the file of the workroom (`machines`, `overlockers`, `irons`), and the lessons are counted with the turns.
teacher-lesson = Lesson { $number }
teacher-pile = The pile of cut pieces
teacher-letter = Letter
teacher-work = Work
teacher-pupil = Pupil
teacher-each = Who does what. Who misses this lesson does the row of their name before the next one.
teacher-everybody = everybody
teacher-letters = Letters
teacher-stands = Where they stand then
# $first, $last: letters.
teacher-range = { $one ->
    [yes] { $first }
   *[no] { $first } to { $last }
 }
# $work (a list): letters with their titles.
teacher-new = Nobody has done this yet, so show it first: { $work }.
# $machines (a list)
teacher-machines = Have ready, so that nobody waits: { $machines }.
# Said only inside the message above. $count (number)
teacher-machine = { $set-up ->
    [straight] { $count } x sewing machine set to straight stitch
    [zigzag] { $count } x sewing machine set to zigzag
    [overlocker] { $count } x overlocker
    [attachment] { $count } x sewing machine with the pleating attachment
   *[iron] { $count } x iron with its board
 }
# $has, $lessons (numbers): of those in the room; the lessons that this one then takes.
teacher-turns = { $place ->
    [machines] Sewing machines in the room: { $has }. Take turns at them, and plan { $lessons } lessons for this one.
    [overlockers] Overlockers in the room: { $has }. Take turns, and plan { $lessons } lessons for this one.
   *[irons] Irons in the room: { $has }. Take turns, and plan { $lessons } lessons for this one.
 }

## The sheets

teacher-progress = Progress
teacher-progress-are = Tick a letter when its work is done and every check in it holds. A dash: that guide has no such work.
teacher-marks = Marks
teacher-marks-are = The same letters, for what you find when you look at the work.
teacher-labels = Labels for the piles
teacher-labels-are = Cut the labels apart and lay one on each pile. Each tells what has to lie under it.
teacher-form = Measuring form
teacher-form-are = Measure over what is worn under the garment. The tape lies flat and is not pulled. Take each measure twice.
teacher-practice = Skills and practice pieces
teacher-way = Way of working
# $ways, $strips (numbers)
teacher-practice-are = Each of the { $ways } ways of working is tried out before it is sewn on the garment: { $strips } strips of { $length } x { $depth } for each pupil and each way. Buy { $bought } more of the { $cloth } for them.
# Of who was not there when all was cut, or is not any more.
teacher-later = Cut later
teacher-later-are = Somebody came, left or was measured again after the first cutting. What lies cut stays as it is; only what is named here is cut anew, from the sections that were planned later.
# $cloths (a list): what is cut later of each cloth; its sections follow those of the first cutting.
teacher-later-buy = For it have ready, beside what was bought at first: { $cloths }.
# Said only inside the message above.
teacher-later-cloth = { $length } of the { $cloth }
teacher-later-stays = Stays as it is cut:
teacher-later-anew = Cut anew:
teacher-later-spare = No longer needed; take the tag off:
teacher-later-sewn = Sew anew, as far as it was sewn:
# $mark: the number of a piece. $count (number)
teacher-later-piece = { $mark } { $piece }, { $count } x { $length } x { $depth }

## Slips

handout-all = Slips for the lessons
handout-for = slips for the lessons, { $whose }
handout-are = Cut the slips apart and hand each one out when its lesson begins. The letters are those of the guide. A slip that was missed is done before the next lesson.
# $stands: a whole sentence.
handout-stop = Stop after { $letter }. Then: { $stands }
