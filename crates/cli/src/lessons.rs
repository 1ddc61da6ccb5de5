//! `pithball lessons`.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use ::lessons::{Block, ClassDoc, FIGURES, Files, Lesson, grade, plain};
use clap::Subcommand;
use comfy_table::Cell;
use format::lesson::LessonProblem;
use serde_json::json;

use crate::files::{self, reason};
use crate::tables::{head, lines, number, one_line, table};

/// What to do with lessons.
#[derive(clap::Args)]
pub(crate) struct Args {
    #[command(subcommand)]
    command: Command,
}

#[derive(Subcommand)]
enum Command {
    /// Prove every lesson of a folder sound (NAME.lesson.md): its form, its numbers, its checks.
    Check(CheckArgs),
    /// Work one lesson through by its own solutions.
    Walk(WalkArgs),
    /// Put progress files together: who finished what, and what was mistaken most.
    Results(ResultsArgs),
    /// List the names that expressions know.
    Names,
}

#[derive(clap::Args)]
struct CheckArgs {
    /// The folder with the lessons; paths in them begin there.
    folder: PathBuf,
    /// Print JSON, for programs.
    #[arg(long)]
    json: bool,
}

#[derive(clap::Args)]
struct WalkArgs {
    /// The lesson (NAME.lesson.md); paths in it begin in its folder.
    lesson: PathBuf,
    /// Print JSON, for programs.
    #[arg(long)]
    json: bool,
}

#[derive(clap::Args)]
struct ResultsArgs {
    /// The progress files (NAME.progress.json).
    #[arg(required = true)]
    files: Vec<PathBuf>,
    /// Print JSON, for programs.
    #[arg(long)]
    json: bool,
}

/// Everything that is wrong, a line each.
pub(crate) fn run(args: &Args) -> Result<String, String> {
    match &args.command {
        Command::Check(args) => check(args),
        Command::Walk(args) => walk(args),
        Command::Results(args) => results(args),
        Command::Names => Ok(names()),
    }
}

/// Files beside the lessons' folder.
struct Beside(PathBuf);

impl Files for Beside {
    fn read(&self, path: &str) -> Option<Vec<u8>> {
        let path = self.0.join(path);
        let small = fs::metadata(&path).is_ok_and(|of| of.len() <= format::MAX_FILE_BYTES as u64);
        small.then(|| fs::read(path).ok()).flatten()
    }
}

fn check(args: &CheckArgs) -> Result<String, String> {
    let folder = &args.folder;
    let cannot = |path: &Path, why: &str| format!("pithball: {}: {why}", one_line(&path.to_string_lossy()));
    let entries = fs::read_dir(folder)
        .map_err(|error| cannot(folder, &format!("The folder cannot be read: {}.", reason(&error))))?;
    let is_lesson = |path: &PathBuf| path.to_string_lossy().ends_with(".lesson.md");
    let mut paths: Vec<PathBuf> = entries.flatten().map(|entry| entry.path()).filter(is_lesson).collect();
    paths.sort();
    if paths.is_empty() {
        return Err(cannot(folder, "There is no lesson (NAME.lesson.md) in this folder."));
    }
    let (mut sound, mut wrong) = (Vec::new(), Vec::new());
    let mut ids: BTreeMap<String, PathBuf> = BTreeMap::new();
    for path in paths {
        let mut tell = |problem: &LessonProblem| {
            let place = format!("{}:{}:{}", path.display(), problem.line, problem.column);
            wrong.push(format!("pithball: {}", one_line(&format!("{place}: {}", problem.problem))));
        };
        let text = match files::lesson(&path) {
            Ok(text) => text,
            Err(complaint) => {
                wrong.push(complaint.to_string());
                continue;
            }
        };
        let above = folder.join("..");
        match Lesson::read(&text, Box::new(Beside(above))) {
            Err(problems) => problems.iter().for_each(&mut tell),
            Ok(lesson) => {
                lesson.unsound().iter().for_each(&mut tell);
                if let Some(other) = ids.insert(lesson.file().id.clone(), path.clone()) {
                    let why = format!("The id {:?} is that of {} too.", lesson.file().id, other.display());
                    wrong.push(cannot(&path, &why));
                }
                sound.push(lesson);
            }
        }
    }
    if !wrong.is_empty() {
        return Err(wrong.join("\n"));
    }
    sound.sort_by(|a, b| (&a.file().course, a.file().order).cmp(&(&b.file().course, b.file().order)));
    Ok(if args.json { listed(&sound) } else { told(&sound) })
}

fn walk(args: &WalkArgs) -> Result<String, String> {
    let path = &args.lesson;
    let place = |line: String| format!("pithball: {}", one_line(&format!("{}{line}", path.display())));
    let text = files::lesson(path).map_err(|complaint| complaint.to_string())?;
    let above = path.parent().unwrap_or(Path::new("")).join("..");
    let lesson = Lesson::read(&text, Box::new(Beside(above))).map_err(|problems| {
        let one = |wrong: &LessonProblem| place(format!(":{}:{}: {}", wrong.line, wrong.column, wrong.problem));
        problems.iter().map(one).collect::<Vec<_>>().join("\n")
    })?;
    let (about, steps) = (lesson.about(), lesson.walk().map_err(|problem| place(format!(": {problem}")))?);
    if args.json {
        return Ok(format!("{:#}\n", json!({ "about": about, "steps": steps })));
    }
    let mut told = format!("{}\n", one_line(&about.title));
    for (step, walked) in about.steps.iter().zip(&steps) {
        told += &format!("\n{} ({})\n", one_line(&step.title), step.kind);
        for block in &walked.shown.text {
            match block {
                Block::Paragraph { said } => told += &format!("{}\n", plain(said)),
                Block::List { items, .. } => items.iter().for_each(|said| told += &format!("- {}\n", plain(said))),
            }
        }
        walked.shown.options.iter().for_each(|said| told += &format!("- {}\n", plain(said)));
        walked.checked.done.iter().for_each(|said| told += &format!("Done: {}\n", plain(said)));
    }
    Ok(told)
}

fn listed(sound: &[Lesson]) -> String {
    let of = |lesson: &Lesson| {
        let file = lesson.file();
        json!({
            "id": file.id, "title": file.title, "course": file.course, "order": file.order,
            "minutes": file.minutes, "steps": file.steps.len(), "reading_grade": grade(&lesson.words_read()),
        })
    };
    format!("{:#}\n", json!({ "lessons": sound.iter().map(of).collect::<Vec<_>>() }))
}

fn told(sound: &[Lesson]) -> String {
    let mut table = table();
    table.set_header([
        Cell::new("course"),
        head(""),
        Cell::new("lesson"),
        head("steps"),
        head("minutes"),
        head("grade"),
    ]);
    for lesson in sound {
        let file = lesson.file();
        table.add_row(vec![
            one_line(&file.course).into(),
            number(f64::from(file.order), 0),
            one_line(&file.title).into(),
            number(file.steps.len() as f64, 0),
            number(f64::from(file.minutes), 0),
            number(grade(&lesson.words_read()), 1),
        ]);
    }
    let note = "Every check fails as its step opens and passes by its solution; every number in prose is computed.\n\
        grade: Flesch-Kincaid school grade of what the learner reads; 8 is an age of about 13.\n";
    format!("{}\n{note}", lines(&table))
}

fn results(args: &ResultsArgs) -> Result<String, String> {
    let read = |path: &PathBuf| {
        let file = files::progress(path).map_err(|complaint| complaint.to_string())?;
        Ok((path.display().to_string(), file))
    };
    let class = ClassDoc::new(&args.files.iter().map(read).collect::<Result<Vec<_>, String>>()?);
    if args.json {
        return Ok(format!("{:#}\n", json!(class)));
    }
    let mut learners = table();
    learners.set_header([
        Cell::new("learner"),
        Cell::new("lesson"),
        head("steps done"),
        head("right"),
        head("hints"),
        head("failed tries"),
    ]);
    for learner in &class.learners {
        for (lesson, entry) in class.lessons.iter().zip(&learner.lessons) {
            let Some(entry) = entry else { continue };
            learners.add_row(vec![
                one_line(&learner.learner).into(),
                one_line(&lesson.title).into(),
                head(&format!("{} of {}", entry.passed, entry.of_steps)),
                head(&format!("{} of {}", entry.right, entry.predicted)),
                number(f64::from(entry.hints), 0),
                number(f64::from(entry.tries), 0),
            ]);
        }
    }
    let mut questions = table();
    questions.set_header([Cell::new("question"), head("right"), Cell::new("most common mistake"), head("by")]);
    for question in &class.questions {
        let wrong = question.wrong.first();
        questions.add_row(vec![
            one_line(&question.title).into(),
            head(&format!("{} of {}", question.right, question.answered)),
            wrong.map_or_else(String::new, |wrong| one_line(&wrong.said)).into(),
            head(&wrong.map_or_else(String::new, |wrong| wrong.count.to_string())),
        ]);
    }
    let mut tasks = table();
    tasks.set_header([Cell::new("task"), head("done by"), head("failed tries"), head("hints")]);
    for task in &class.tasks {
        tasks.add_row(vec![
            one_line(&task.title).into(),
            head(&format!("{} of {}", task.passed, task.begun)),
            number(f64::from(task.tries), 0),
            number(f64::from(task.hints), 0),
        ]);
    }
    Ok(format!("{}\n{}\n{}", lines(&learners), lines(&questions), lines(&tasks)))
}

fn names() -> String {
    let mut table = table();
    for figure in FIGURES {
        table.add_row([figure.written(), figure.quantity.unit().to_owned(), figure.words.to_owned()]);
    }
    let note = "Any number of the ball or shot by its place, such as ball.pieces[0].density_g_cc or shot.release.revs_rpm.\n\
        start.NAME: as the step opened. STATE.NAME: of a state that the lesson names.\n";
    format!("{}\n{note}", lines(&table))
}
