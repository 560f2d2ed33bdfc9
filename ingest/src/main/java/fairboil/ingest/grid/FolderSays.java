package fairboil.ingest.grid;

import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;

/** What is said of files that cannot be opened, and what to do. */
final class FolderSays {

  static final Message NO_FOLDER = Template.of("this is a file, not a folder").with();
  static final Template GIVE_FOLDER = Template.of("give the folder that holds {sheet}");
  static final Message NO_SUCH_FOLDER =
      Template.of("there is no such folder, or it may not be read").with();
  static final Message CHECK_SPELLING = Template.of("check how its name is spelt").with();

  static final Message A_FOLDER = Template.of("this is a folder, not a file").with();
  static final Message NAME_A_FILE = Template.of("name a file in it").with();
  static final Message A_DEVICE =
      Template.of("this is not an ordinary file but a pipe or a device").with();
  static final Message COPY_CONTENT =
      Template.of("copy its content into a file of the study folder").with();

  static final Message NO_NAME = Template.of("this cannot be the name of a file").with();
  static final Message NAME_PLAINLY = Template.of("use letters, digits, hyphens and dots").with();
  static final Message LEADS_OUT =
      Template.of("this path leads out of the study folder, so it was not opened").with();
  static final Message KEEP_INSIDE =
      Template.of("copy the file into the study folder and give its name relative to that folder")
          .with();

  static final Message NO_SUCH_FILE = Template.of("there is no such file").with();
  static final Template OTHER_CAPITALS = Template.of("did you mean {name}? Capital letters count");
  static final Message CHECK_COPY =
      Template.of("check how its name is spelt and that it was copied into the study folder")
          .with();

  static final Message MAY_NOT_BE_READ = Template.of("this file may not be read").with();
  static final Message CHECK_PERMISSIONS =
      Template.of("check its permissions, or that no program holds it").with();
  static final Message SPLIT =
      Template.of("split it, or leave out what does not belong to the runs").with();

  private FolderSays() {}
}
