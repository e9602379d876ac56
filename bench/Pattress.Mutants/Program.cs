using Pattress.Mutants;

// Mutation testing on demand: every mutant is compiled once behind a switch, then the tests that reach it are run with it on.
//   build TESTS OUT FOLDER…      mutate src/Pattress/FOLDER…, into a copy of the tests' binaries
//   baseline OUT NAMESPACE…      run the tests once, note which mutant each test reaches
//   run OUT SECONDS [SEED]       try mutants in a seeded order for so long; goes on where it stopped; another seed takes another sample
//   report OUT TITLE             what died and what survived, as Markdown on stdout; exit code 1 if the planted mutant lives
return args switch
{
    ["build", var tests, var folder, .. var parts] => Building.Run(tests, folder, parts),
    ["baseline", var folder, .. var spaces] => Campaign.Baseline(folder, spaces),
    ["run", var folder, var seconds] => Campaign.Run(folder, int.Parse(seconds, System.Globalization.CultureInfo.InvariantCulture)),
    ["run", var folder, var seconds, var seed] => Campaign.Run(folder, int.Parse(seconds, System.Globalization.CultureInfo.InvariantCulture), int.Parse(seed, System.Globalization.CultureInfo.InvariantCulture)),
    ["report", var folder, var title] => Report.Write(folder, title, Console.Out),
    ["worker", var folder, .. var spaces] => Worker.Run(folder, spaces),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("build TESTS OUT FOLDER…, baseline OUT NAMESPACE…, run OUT SECONDS [SEED], report OUT TITLE");
    return 2;
}
