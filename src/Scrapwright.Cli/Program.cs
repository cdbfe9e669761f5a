using Scrapwright.Cli;
using Scrapwright.Cli.Output;

return await CommandLine.RunAsync(args, Terminal.OfThisProcess());
